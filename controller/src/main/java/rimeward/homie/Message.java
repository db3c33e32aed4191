package rimeward.homie;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.Arrays;
import java.util.Objects;

/**
 * One message to a broker.
 *
 * @param payload UTF-8, not to be changed any more; without a byte it deletes a retained topic
 * @param qos MQTT's quality of service: 0 at most once, 1 at least once, 2 once
 * @param retained whether the broker keeps it for whoever comes later
 */
@SuppressWarnings("ArrayRecordComponent") // bytes are what a line carries; they are compared by content below
public record Message(String topic, byte[] payload, int qos, boolean retained) {
    private static final int ONCE = 2;
    private static final byte[] NOTHING = {};
    private static final byte[] EMPTY_STRING = {0};

    /** What a late comer shall see too; an empty text is told as Homie has it, as one byte 0. */
    static Message retained(String topic, String text) {
        return new Message(topic, text.isEmpty() ? EMPTY_STRING : text.getBytes(UTF_8), ONCE, true);
    }

    /** Takes away what the broker keeps. */
    static Message deleting(String topic) {
        return new Message(topic, NOTHING, ONCE, true);
    }

    /** What only those hear who listen now. */
    static Message passing(String topic, String text) {
        return new Message(topic, text.isEmpty() ? EMPTY_STRING : text.getBytes(UTF_8), 0, false);
    }

    /** Whether it takes away what the broker keeps. */
    public boolean isDeleting() {
        return retained && payload.length == 0;
    }

    /** The payload as a person reads it. */
    public String text() {
        return new String(payload, UTF_8);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Message message
                && topic.equals(message.topic)
                && Arrays.equals(payload, message.payload)
                && qos == message.qos
                && retained == message.retained;
    }

    @Override
    public int hashCode() {
        return Objects.hash(topic, Arrays.hashCode(payload), qos, retained);
    }

    @Override
    public String toString() {
        return topic + (retained ? " retained" : "") + " qos " + qos + ": " + (isDeleting() ? "(deletes)" : text());
    }
}
