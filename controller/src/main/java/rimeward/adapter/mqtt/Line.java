package rimeward.adapter.mqtt;

import java.util.List;
import rimeward.homie.Message;

/** One attempt at the broker, used once. One thread calls it; every call comes back within a bounded time. */
interface Line {
    /** Makes lines; what each hears goes to the ear. */
    interface Maker {
        Line make(Ear ear);
    }

    /** Connects; the broker publishes {@code will} should we vanish. */
    void open(Message will) throws LineFailed;

    /** Subscribes. */
    void listen(List<String> filters) throws LineFailed;

    /** Sends in this order, and comes back when the broker has acknowledged whatever it acknowledges. */
    void send(List<Message> messages) throws LineFailed;

    /** Takes leave, so that the broker does not publish the will. */
    void leave() throws LineFailed;

    /** Lets go of everything, without a word to the broker. Never throws. */
    void close();
}
