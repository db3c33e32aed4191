package rimeward.port;

import java.util.Optional;
import rimeward.core.reading.Tick;

/** The one door for time: on a Pi it sleeps, in the simulator it advances the physics. */
public interface Ticker {
    /** Waits for the next beat; empty when there will be no more. */
    Optional<Tick> next();
}
