package rimeward.adapter.pi;

import rimeward.core.reading.SensorReading;

/** One attached sensor. */
@FunctionalInterface
interface Probe {
    /** Asks it now, with ages of 0. May take its time, or hang: only a bus's own thread calls it. Never throws {@code IOException}. */
    SensorReading read();
}
