package rimeward.assembly;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.function.Consumer;
import rimeward.alert.Alert;
import rimeward.port.Outbox;

/** Serves where there is no database. Bounded: when it is full the oldest alert makes way. From any thread. */
final class MemoryOutbox implements Outbox {
    /** Weeks of what a tunnel in trouble raises. */
    static final int MOST = 2048;

    private final Deque<Entry> unsent = new ArrayDeque<>();
    private long next;

    /** @param firstNumber time of day in ms, so that no number comes again after a restart */
    MemoryOutbox(long firstNumber) {
        next = firstNumber;
    }

    synchronized void add(Alert alert) {
        unsent.removeIf(before -> alert.replaces(before.alert()));
        if (unsent.size() >= MOST) {
            unsent.remove();
        }
        unsent.add(new Entry(next, alert));
        next++;
    }

    @Override
    public void ask(int most, Consumer<List<Entry>> answer) {
        answer.accept(oldest(most));
    }

    private synchronized List<Entry> oldest(int most) {
        return unsent.stream().limit(most).toList();
    }

    @Override
    public synchronized void sent(Entry entry, long epochMs) {
        unsent.remove(entry);
    }
}
