package rimeward.port;

import java.util.Optional;
import rimeward.core.reading.Tick;

/** The one door for time: on a Pi it sleeps, in the simulator it advances the physics. */
public interface Ticker {
    /** Waits for the next beat; empty when there will be no more. */
    Optional<Tick> next();

    /** Whether the newest tick came more than a beat late; simulated time is never late. */
    default boolean isLate() {
        return false;
    }

    /** Whether the time of day has jumped against the monotonic one. */
    default boolean hasWallJumped() {
        return false;
    }
}
