package rimeward.adapter.mqtt;

import java.util.List;
import rimeward.core.Stepped;
import rimeward.core.order.Answer;
import rimeward.core.outlook.NightPlan;
import rimeward.core.outlook.PastNight;
import rimeward.homie.Message;
import rimeward.port.Outbox;

/** What is said on the line. Asked on the line's thread only. */
interface DeviceTree {
    /** What the broker says for us when we vanish. */
    Message will();

    /** Filters: commands, and what we say ourselves, whose echo shows that it arrived. */
    List<String> subscriptions();

    /** The first words on a line; more may follow from what is heard. */
    List<Message> atConnect();

    /** Whether everything has been said on this line, so that alerts may follow. */
    boolean isReady();

    /** What a decision has changed; without a line it only takes note. */
    List<Message> after(Stepped stepped);

    /** How an alert is told; each of these comes back as an echo. */
    List<Message> of(Outbox.Entry entry);

    /** What became of an order. */
    List<Message> answered(Answer answer);

    /** A newer plan of the coming night; without a line it only takes note. */
    List<Message> planned(NightPlan plan);

    /** A night is over; without a line it only takes note. */
    List<Message> reckoned(PastNight night);

    /** What the service says of itself, for those who listen now. */
    List<Message> says(String line);

    /** What is said before an orderly end. */
    List<Message> atStop();

    /** The line broke. */
    void lineBroke();

    /** Takes a message of others, or an echo. */
    List<Message> heard(Post.Heard heard, long nowMs);

    /** Looks after what waits for its time. */
    List<Message> tidy(long nowMs);
}
