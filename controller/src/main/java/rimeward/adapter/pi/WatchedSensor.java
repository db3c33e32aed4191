package rimeward.adapter.pi;

import java.util.function.LongSupplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rimeward.core.reading.Reading;
import rimeward.core.reading.SensorReading;

/** A sensor and where its readings go. */
record WatchedSensor(Probe probe, Cell cell, LongSupplier nanoTime) implements Watched {
    private static final Logger LOG = LoggerFactory.getLogger(WatchedSensor.class);

    @Override
    public void ask() {
        long askedNs = nanoTime.getAsLong(); // before the read: a slow answer is as old as its question
        cell.put(safely(), askedNs);
    }

    /** A bug in one probe must not leave an old number standing as its last word. */
    private SensorReading safely() {
        try {
            return probe.read();
        } catch (RuntimeException e) {
            LOG.debug("a probe failed", e);
            return new SensorReading(Reading.NO_ANSWER, Reading.NO_ANSWER);
        }
    }
}
