package rimeward.service;

import rimeward.core.reading.WallTime;
import rimeward.port.Forecasts;
import rimeward.port.HandedReadings;
import rimeward.port.Health;
import rimeward.port.Relays;
import rimeward.port.Sensors;
import rimeward.port.Ticker;

/** Where a service stands: a tunnel with its clocks, real or simulated. It cannot see which. */
public interface Surroundings {
    Sensors sensors();

    Relays relays();

    /** Where readings go that others hand in by message. */
    default HandedReadings handedReadings() {
        return HandedReadings.nowhere();
    }

    Forecasts forecasts();

    /** How the computer is that all this runs on. */
    default Health health() {
        return Health.sound();
    }

    /** The time of day. */
    WallTime now();

    /** Names the machine's run since it was switched on; empty where that is not known. */
    String boot();

    /**
     * Begins to tick, now.
     *
     * @param fromElapsedMs what the first tick counts from, ms of monotonic time
     */
    Ticker ticker(long fromElapsedMs);

    /** Control has ended, in whatever way: the relays go to their stop state. Before anything that may take its time. */
    void letGo();
}
