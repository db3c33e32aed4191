package rimeward.service;

import rimeward.core.reading.WallTime;

/** How far the wall clock is believed: it should go as fast as the monotonic one. For the loop's thread. */
final class WallJudge {
    /** Setting a clock finely moves it by less, ms. Own choice. */
    private static final long FINE_MS = 30_000;

    /** A new time that stands so long is taken for the right one, ms. Own choice. */
    private static final long STEADY_MS = 3_600_000;

    private boolean begun;
    private boolean wasSet;
    private long soundOffsetMs;
    private long jumpOffsetMs;
    private long jumpAtMs;
    private boolean jumped;

    /** The time of day at this moment of monotonic time. */
    WallTime judge(long monotonicMs, long wallMs, boolean set) {
        long offsetMs = wallMs - monotonicMs;
        boolean firstSet = set && !wasSet;
        wasSet = set;
        if (!begun || firstSet || isNear(offsetMs, soundOffsetMs)) {
            begun = true;
            believe(offsetMs);
        } else if (!jumped || !isNear(offsetMs, jumpOffsetMs)) {
            jumped = true;
            jumpOffsetMs = offsetMs;
            jumpAtMs = monotonicMs;
        } else if (monotonicMs - jumpAtMs >= STEADY_MS) {
            believe(offsetMs);
        }
        return new WallTime(wallMs, set && !jumped);
    }

    private void believe(long offsetMs) {
        soundOffsetMs = offsetMs;
        jumped = false;
    }

    private static boolean isNear(long offsetMs, long otherMs) {
        return Math.abs(offsetMs - otherMs) <= FINE_MS;
    }

    boolean hasJumped() {
        return jumped;
    }
}
