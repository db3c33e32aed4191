package rimeward.service;

import rimeward.core.ControlState;
import rimeward.core.reading.WallTime;
import rimeward.record.SavedState;

/**
 * Where control takes up again: its state, and the monotonic time it counts on from.
 *
 * @param elapsedMs monotonic time of the first tick, ms
 */
public record Restart(ControlState state, long elapsedMs) {
    /** How long nobody was there, ms: by the wall clock where both ends are trusted, else nothing, so that rests begin anew. */
    public static long outageMs(SavedState saved, WallTime now) {
        boolean trusted = saved.wall().trusted() && now.trusted();
        return trusted ? Math.max(0, now.epochMs() - saved.wall().epochMs()) : 0;
    }
}
