package rimeward.core;

import rimeward.core.reading.Tick;

/**
 * When the last tick was, and how far apart ticks usually lie: so a late tick can be told from one after a power cut, whether
 * the loop goes by the second or by the minute.
 *
 * @param elapsedMs monotonic time of the last tick, ms
 * @param usualS from the tick before to the last one, s
 */
public record Pulse(long elapsedMs, double usualS) {
    /** No loop is slower, s. */
    private static final double SLOWEST_S = 60;

    /** A small computer needs this long from mains to its first tick, s. Common practice, no source. */
    private static final double START_UP_S = 30;

    /** A tick that takes this many times as long is not merely late. Own choice. */
    private static final double LATE = 1.5;

    /** Before the first tick: nothing counts as a power cut that a slow loop would do every time. */
    public static Pulse start() {
        return new Pulse(0, SLOWEST_S);
    }

    /** From the last tick to this one, s; 0 where the clock runs back. */
    public double sinceS(Tick now) {
        return StrictMath.max(0, now.elapsedMs() - elapsedMs) / 1000.0;
    }

    /** How long there was no controller before this tick, s; 0 where the pulse went on. */
    public double outageS(Tick now) {
        double sinceS = sinceS(now);
        return sinceS > StrictMath.max(START_UP_S, LATE * usualS) ? sinceS : 0;
    }

    /** What the tick after will be handed. */
    public Pulse after(Tick now) {
        double sinceS = sinceS(now);
        return new Pulse(now.elapsedMs(), sinceS > 0 ? StrictMath.min(SLOWEST_S, sinceS) : usualS);
    }
}
