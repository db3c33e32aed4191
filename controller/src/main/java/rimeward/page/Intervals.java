package rimeward.page;

import org.jspecify.annotations.Nullable;
import rimeward.record.FrameRow;

/** The whiles between kept frames, each as its first frame has it: every change is kept, so nothing switched in between. */
final class Intervals {
    /** Thinned rows lie ten minutes apart; a longer while was without a controller. */
    private static final long LONGEST_MS = 15 * 60_000L;

    /** Takes a while. */
    interface Taker {
        void take(FrameRow row, long fromMs, long toMs);
    }

    private final Taker taker;
    private @Nullable FrameRow before;

    Intervals(Taker taker) {
        this.taker = taker;
    }

    /** The next kept frame. */
    void add(FrameRow row) {
        FrameRow last = before;
        before = row;
        if (last == null) {
            return;
        }
        long fromMs = epochMs(last);
        long toMs = epochMs(row);
        boolean dark = row.outageS() > 0;
        if (toMs > fromMs && toMs - fromMs <= LONGEST_MS && !dark) {
            taker.take(last, fromMs, toMs);
        }
    }

    static long epochMs(FrameRow row) {
        return row.frame().tick().wall().epochMs();
    }
}
