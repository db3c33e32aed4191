package rimeward.adapter.journal;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import rimeward.alert.Alert;
import rimeward.port.Outbox;
import rimeward.record.FrameRow;
import rimeward.record.Night;
import rimeward.record.Switched;

/**
 * What waits for the writer, handed over by the loop under a lock that is held for a few instructions. Of states only the newest
 * counts; alerts all wait (their number is bounded by the alert board, which lets none flap); history is bounded: when it is
 * full a minute's row is dropped, and a change pushes out the oldest row, a minute's before another change's.
 */
final class Lanes {
    /** One kept frame and what belongs to it; {@code nights} holds the newest stand. */
    record History(FrameRow row, List<Switched> switches, List<Night> nights) {
        long elapsedMs() {
            return row.frame().tick().elapsedMs();
        }
    }

    /** What the writer is handed: everything urgent, and history if its time has come. */
    record Work(
            List<Alert> alerts,
            List<Mark> marks,
            List<Ask> asks,
            Optional<String> state,
            List<Note> notes,
            List<History> history,
            long dropped,
            boolean last) {}

    /** An alert that has arrived, and when, time of day. */
    record Mark(Outbox.Entry entry, long epochMs) {}

    /** Somebody asks for the oldest alerts that are not sent. */
    record Ask(int most, Consumer<List<Outbox.Entry>> answer) {}

    private final JournalLimits limits;
    private final Deque<History> history = new ArrayDeque<>();
    private List<Alert> alerts = new ArrayList<>();
    private List<Mark> marks = new ArrayList<>();
    private List<Ask> asks = new ArrayList<>();
    private @Nullable String state;
    private final Map<String, Note> notes = new LinkedHashMap<>();
    private long dropped;
    private boolean flush;
    private boolean closed;
    private long handed;
    private long inHand;
    private long done;

    Lanes(JournalLimits limits) {
        this.limits = limits;
    }

    synchronized void tell(List<Alert> more) {
        alerts.addAll(more);
        handed++;
        notifyAll();
    }

    synchronized void mark(Mark mark) {
        marks.add(mark);
        handed++;
        notifyAll();
    }

    synchronized void ask(Ask ask) {
        asks.add(ask);
        handed++;
        notifyAll();
    }

    synchronized void keep(String newest) {
        state = newest;
        handed++;
        notifyAll();
    }

    /** In place of an earlier one of the same name. */
    synchronized void keep(Note newest) {
        notes.put(newest.key(), newest);
        handed++;
        notifyAll();
    }

    synchronized void add(History item) {
        if (history.size() >= limits.waitingRows() && !madeRoomFor(item)) {
            dropped++;
            return;
        }
        history.add(item);
        if (isDue()) {
            notifyAll();
        }
    }

    private boolean madeRoomFor(History item) {
        if (!item.row().change()) {
            return false;
        }
        for (Iterator<History> each = history.iterator(); each.hasNext(); ) {
            if (!each.next().row().change()) {
                each.remove();
                dropped++;
                return true;
            }
        }
        history.removeFirst();
        dropped++;
        return true;
    }

    private boolean isDue() {
        History first = history.peekFirst();
        History last = history.peekLast();
        if (first == null || last == null) {
            return false;
        }
        long spanMs = last.elapsedMs() - first.elapsedMs();
        return flush
                || closed
                || spanMs >= limits.batchMs()
                || spanMs < 0
                || history.size() >= limits.waitingRows() / 2;
    }

    private boolean isUrgent() {
        return !alerts.isEmpty() || !marks.isEmpty() || !asks.isEmpty() || state != null || !notes.isEmpty();
    }

    /** Waits for work: anything urgent, or history whose time has come. */
    synchronized Work next() throws InterruptedException {
        while (!isUrgent() && !isDue() && !closed && !flush) {
            wait();
        }
        List<History> batch = isDue() ? List.copyOf(history) : List.of();
        if (!batch.isEmpty()) {
            history.clear();
        }
        Work work = new Work(
                alerts, marks, asks, Optional.ofNullable(state), List.copyOf(notes.values()), batch, dropped, closed);
        alerts = new ArrayList<>();
        marks = new ArrayList<>();
        asks = new ArrayList<>();
        state = null;
        notes.clear();
        dropped = 0;
        flush = false;
        inHand = handed;
        return work;
    }

    /** All work that {@link #next} gave has been tried. */
    synchronized void tried() {
        done = inHand;
        notifyAll();
    }

    /** Asks for everything to be written now and waits until it has been tried. */
    synchronized void flush() throws InterruptedException {
        handed++;
        long mine = handed;
        flush = true;
        notifyAll();
        while (done < mine) {
            wait();
        }
    }

    /** Waits until the alerts and the state handed over before have been tried; history keeps its time. */
    synchronized void settle() throws InterruptedException {
        long mine = handed;
        while (done < mine) {
            wait();
        }
    }

    synchronized void close() {
        closed = true;
        handed++;
        notifyAll();
    }
}
