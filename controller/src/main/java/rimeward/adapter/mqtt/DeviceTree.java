package rimeward.adapter.mqtt;

import java.util.List;
import rimeward.core.Stepped;
import rimeward.homie.Message;
import rimeward.port.Outbox;

/** What is said on the line. Asked on the line's thread only. */
public interface DeviceTree {
    /** What the broker says for us when we vanish. */
    Message will();

    /** Filters: commands, and our own alerts, whose echo shows that they arrived. */
    List<String> subscriptions();

    /** Everything, retained, from the beginning to "ready". */
    List<Message> atConnect();

    /** What a decision has changed. */
    List<Message> after(Stepped stepped);

    /** How an alert is told; each of these comes back as an echo. */
    List<Message> of(Outbox.Entry entry);

    /** What is said before an orderly end. */
    List<Message> atStop();

    /** Takes a message of others. */
    void heard(String topic, byte[] payload, boolean retained);
}
