package rimeward.adapter.pi;

import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rimeward.core.reading.Reading;
import rimeward.core.reading.SensorReading;

/** Reads the sensors of one bus in turn, for ever, on a thread of its own: whoever hangs there holds up nobody else. */
final class BusThread implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(BusThread.class);

    /** A DHT22 may be asked every 2 s at most (its datasheet); the others lose nothing by it, and warm themselves less. */
    static final long PACE_MS = 2_500;

    /** A sensor and where its readings go. */
    record Watched(Probe probe, Cell cell) {}

    private final String name;
    private final List<Watched> sensors;
    private final LongSupplier nanoTime;
    private final CountDownLatch stop = new CountDownLatch(1);

    BusThread(String name, List<Watched> sensors, LongSupplier nanoTime) {
        this.name = name;
        this.sensors = List.copyOf(sensors);
        this.nanoTime = nanoTime;
    }

    void start() {
        Thread thread = new Thread(this::run, name);
        thread.setDaemon(true);
        thread.start();
    }

    private void run() {
        try {
            do {
                round();
            } while (!stop.await(PACE_MS, TimeUnit.MILLISECONDS));
        } catch (InterruptedException e) {
            LOG.warn(
                    "reading {} was interrupted and ends",
                    Thread.currentThread().getName());
        }
    }

    /** Reads each sensor once. */
    void round() {
        for (Watched each : sensors) {
            long askedNs = nanoTime.getAsLong(); // before the read: a slow answer is as old as its question
            each.cell().put(safely(each.probe()), askedNs);
        }
    }

    /** A bug in one probe must not silence the bus. */
    private static SensorReading safely(Probe probe) {
        try {
            return probe.read();
        } catch (RuntimeException e) {
            LOG.debug("a probe failed", e);
            return new SensorReading(Reading.NO_ANSWER, Reading.NO_ANSWER);
        }
    }

    @Override
    public void close() {
        stop.countDown();
    }
}
