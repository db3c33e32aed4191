package rimeward.adapter.web;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import rimeward.core.Outcome;
import rimeward.record.FrameRow;
import rimeward.site.RelaySet;

/** The last quarter of an hour, because the record is written only every ten minutes. From any thread. */
final class Recent {
    private static final int MOST = 64;
    private static final long EVERY_MS = 30_000;

    private final Deque<Outcome> last = new ArrayDeque<>();
    private long takenMs;
    private RelaySet closed = RelaySet.none();

    /** Takes note of every change and of two a minute. */
    synchronized void add(Outcome outcome) {
        long nowMs = outcome.frame().tick().elapsedMs();
        RelaySet nowClosed = outcome.guarded().closed();
        if (last.isEmpty() || nowMs - takenMs >= EVERY_MS || nowMs < takenMs || !nowClosed.equals(closed)) {
            takenMs = nowMs;
            closed = nowClosed;
            last.add(outcome);
            if (last.size() > MOST) {
                last.remove();
            }
        }
    }

    /** What came after that time of day, ms since 1970 UTC, in order. */
    synchronized List<FrameRow> after(long epochMs) {
        return last.stream()
                .filter(outcome -> outcome.frame().tick().wall().epochMs() > epochMs)
                .map(outcome -> FrameRow.of(outcome, false))
                .toList();
    }
}
