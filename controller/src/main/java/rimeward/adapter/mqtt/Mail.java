package rimeward.adapter.mqtt;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rimeward.homie.Message;
import rimeward.port.Outbox;

/**
 * The one alert that is on its way. It has arrived when the broker has sent us back every message of it; an acknowledgement alone says
 * little, because a broker that forbids a topic acknowledges it all the same (MQTT 3.1.1, 3.3.5).
 */
final class Mail {
    /** How long an echo may take, and how long to rest after one that never came, ms. */
    static final long ECHO_MS = 10_000;

    static final long LONGEST_REST_MS = 300_000;

    private Outbox.@Nullable Entry entry;
    private List<Message> awaited = List.of();
    private long dueMs;
    private long restMs = ECHO_MS;
    private boolean onItsWay;

    /** The alert in hand. */
    Optional<Outbox.Entry> inHand() {
        return Optional.ofNullable(entry);
    }

    void take(Outbox.Entry next) {
        entry = next;
        onItsWay = false;
        dueMs = Long.MIN_VALUE;
        restMs = ECHO_MS;
    }

    /** Whether it is to be sent now, for the first time or again. */
    boolean isDue(long nowMs) {
        return entry != null && !onItsWay && nowMs >= dueMs;
    }

    void sending(List<Message> messages, long nowMs) {
        awaited = new ArrayList<>(messages);
        onItsWay = true;
        dueMs = nowMs + ECHO_MS;
    }

    /** The line broke: it is to be sent again on the next. */
    void lineBroke() {
        onItsWay = false;
        dueMs = Long.MIN_VALUE;
    }

    /** Whether this was the last echo that was missing. */
    boolean isComplete(Post.Heard heard) {
        if (!onItsWay || heard.retained()) { // a retained one may be an earlier run's
            return false;
        }
        for (Iterator<Message> each = awaited.iterator(); each.hasNext(); ) {
            Message message = each.next();
            if (message.topic().equals(heard.topic()) && Arrays.equals(message.payload(), heard.payload())) {
                each.remove();
                return awaited.isEmpty();
            }
        }
        return false;
    }

    void arrived() {
        entry = null;
        onItsWay = false;
    }

    /** Whether the echo is overdue; then it rests, longer each time. */
    boolean isOverdue(long nowMs) {
        if (!onItsWay || nowMs < dueMs) {
            return false;
        }
        onItsWay = false;
        dueMs = nowMs + restMs;
        restMs = Math.min(LONGEST_REST_MS, 2 * restMs);
        return true;
    }

    /** How long until something is to be done, ms. */
    long waitMs(long nowMs) {
        return entry == null ? Long.MAX_VALUE : Math.max(0, dueMs - nowMs);
    }
}
