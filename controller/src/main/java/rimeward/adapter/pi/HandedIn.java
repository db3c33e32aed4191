package rimeward.adapter.pi;

import java.util.Map;
import java.util.function.LongSupplier;
import rimeward.core.reading.Loss;
import rimeward.core.reading.Reading;
import rimeward.core.reading.SensorReading;
import rimeward.port.HandedReadings;

/** The door for readings that others take and hand in ({@code by = "handed-in"}). For any thread; never waits. */
public final class HandedIn implements HandedReadings {
    private final Map<String, Cell> cells;
    private final LongSupplier nanoTime;

    HandedIn(Map<String, Cell> cells, LongSupplier nanoTime) {
        this.cells = Map.copyOf(cells);
        this.nanoTime = nanoTime;
    }

    @Override
    public boolean accept(String sensorId, SensorReading reading) {
        return accept(sensorId, reading, nanoTime.getAsLong());
    }

    /**
     * Takes a reading; one that is older than what is known already changes nothing. The ages in it do not count.
     *
     * @param takenNs when it was taken, monotonic, ns; a time to come counts as now
     * @return false where no sensor of that name waits for readings
     */
    public boolean accept(String sensorId, SensorReading reading, long takenNs) {
        Cell cell = cells.get(sensorId);
        if (cell == null) {
            return false;
        }
        SensorReading sound = new SensorReading(finite(reading.airC()), finite(reading.rhPercent()));
        cell.put(sound, StrictMath.min(takenNs, nanoTime.getAsLong()));
        return true;
    }

    private static Reading finite(Reading reading) {
        boolean number = !(reading instanceof Reading.Value value) || Double.isFinite(value.value());
        return number ? reading : new Reading.Lost(Loss.FAULT_VALUE);
    }
}
