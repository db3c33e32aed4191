package rimeward.adapter.mqtt;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rimeward.core.Stepped;
import rimeward.core.order.Answer;
import rimeward.core.outlook.NightPlan;
import rimeward.core.outlook.PastNight;
import rimeward.port.Outbox;

/**
 * What others hand over to the line's thread; each call holds a lock for a few instructions. Of decisions only the newest counts,
 * messages of others are bounded: when too many wait, the newest is left out.
 */
final class Post {
    /** Many times what a person sends; a flood must not fill the memory. */
    private static final int MOST_HEARD = 256;

    /** Of what the service says of itself: nobody misses more of it than this, and it stands in its own log. */
    private static final int MOST_SAID = 64;

    /** A message of others; its payload is not changed any more. */
    @SuppressWarnings("ArrayRecordComponent") // handed on, never compared as a whole
    record Heard(String topic, byte[] payload, boolean retained, boolean duplicate) {}

    private final Bell bell;
    private final Deque<Heard> heard = new ArrayDeque<>();
    private final Deque<Outbox.Entry> mail = new ArrayDeque<>();
    private final Deque<Answer> answers = new ArrayDeque<>();
    private final Deque<String> said = new ArrayDeque<>();
    private @Nullable Stepped newest;
    private @Nullable NightPlan newestPlan;
    private @Nullable PastNight newestNight;
    private @Nullable Ear ear;
    private @Nullable String lost;
    private boolean news = true; // an earlier run may have left some
    private boolean asked;
    private boolean stopping;
    private long leftOut;

    Post(Bell bell) {
        this.bell = bell;
    }

    synchronized void decided(Stepped stepped) {
        newest = stepped;
        bell.ring();
    }

    synchronized void planned(NightPlan plan) {
        newestPlan = plan;
        bell.ring();
    }

    synchronized void reckoned(PastNight night) {
        newestNight = night;
        bell.ring();
    }

    /** The newest plan since it was last asked for. */
    synchronized Optional<NightPlan> nextPlan() {
        Optional<NightPlan> found = Optional.ofNullable(newestPlan);
        newestPlan = null;
        return found;
    }

    /** The night that ended since it was last asked for. */
    synchronized Optional<PastNight> nextNight() {
        Optional<PastNight> found = Optional.ofNullable(newestNight);
        newestNight = null;
        return found;
    }

    /** What became of an order; bounded, for they come no faster than orders do. */
    synchronized void answered(Answer answer) {
        if (answers.size() < MOST_HEARD) {
            answers.add(answer);
            bell.ring();
        }
    }

    synchronized Optional<Answer> nextAnswer() {
        return Optional.ofNullable(answers.poll());
    }

    /** The service says something of itself; of what cannot be sent yet the oldest is left out. */
    synchronized void says(String line) {
        if (said.size() >= MOST_SAID) {
            said.remove();
        }
        said.add(line);
        bell.ring();
    }

    synchronized Optional<String> nextSaid() {
        return Optional.ofNullable(said.poll());
    }

    /** There is something new in the outbox. */
    synchronized void news() {
        news = true;
        bell.ring();
    }

    synchronized void stop() {
        stopping = true;
        bell.ring();
    }

    synchronized boolean isStopping() {
        return stopping;
    }

    /** The ear of a new line; what earlier lines still say is not listened to. */
    synchronized Ear newEar() {
        heard.clear();
        lost = null;
        Ear mine = new Ear() {
            @Override
            public void heard(String topic, byte[] payload, boolean retained, boolean duplicate) {
                take(this, new Heard(topic, payload, retained, duplicate));
            }

            @Override
            public void lost(String why) {
                take(this, why);
            }
        };
        ear = mine;
        return mine;
    }

    private synchronized void take(Ear from, Heard message) {
        if (from != ear) {
            return;
        }
        if (heard.size() >= MOST_HEARD) {
            leftOut++;
            return;
        }
        heard.add(message);
        bell.ring();
    }

    private synchronized void take(Ear from, String why) {
        if (from == ear && lost == null) {
            lost = why;
            bell.ring();
        }
    }

    synchronized Optional<Heard> nextHeard() {
        return Optional.ofNullable(heard.poll());
    }

    /** The newest decision since it was last asked for. */
    synchronized Optional<Stepped> nextDecided() {
        Optional<Stepped> found = Optional.ofNullable(newest);
        newest = null;
        return found;
    }

    /** How many messages were left out since it was last asked. */
    synchronized long leftOut() {
        long count = leftOut;
        leftOut = 0;
        return count;
    }

    synchronized void check() throws LineFailed {
        if (lost != null) {
            throw new LineFailed(lost);
        }
    }

    /** The next alert to send; asks the outbox for more when none is at hand and there may be some. */
    Optional<Outbox.Entry> nextMail(Outbox outbox, int most) {
        synchronized (this) {
            Outbox.Entry next = mail.poll();
            if (next != null) {
                return Optional.of(next);
            }
            if (asked || !news) {
                return Optional.empty();
            }
            asked = true;
            news = false;
        }
        outbox.ask(most, found -> answer(found, most));
        return Optional.empty();
    }

    private synchronized void answer(List<Outbox.Entry> found, int most) {
        mail.addAll(new ArrayList<>(found));
        asked = false;
        news |= found.size() >= most;
        bell.ring();
    }
}
