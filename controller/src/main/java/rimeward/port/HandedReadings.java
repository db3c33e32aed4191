package rimeward.port;

import rimeward.core.reading.SensorReading;

/** Where readings go that others take and hand in. */
public interface HandedReadings {
    /**
     * Takes a reading, as of now. From any thread; never waits and never throws.
     *
     * @return false where no sensor of that name waits for readings
     */
    boolean accept(String sensorId, SensorReading reading);

    /** Where nobody waits for any. */
    static HandedReadings nowhere() {
        return (sensorId, reading) -> false;
    }
}
