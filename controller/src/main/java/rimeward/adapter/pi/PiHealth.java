package rimeward.adapter.pi;

import java.nio.file.Path;
import java.util.List;
import java.util.function.LongSupplier;
import rimeward.port.Health;

/** The computer's supply and its disk, each looked at on a thread of its own: a disk may hang. */
public final class PiHealth implements Health, AutoCloseable {
    private final WatchedSupply supply;
    private final WatchedDisk disk;
    private final List<BusThread> threads;

    /**
     * Starts looking.
     *
     * @param root {@code /}, or a folder that stands in for it
     * @param data folder on the record's disk
     * @param nanoTime monotonic time, ns: {@code System.nanoTime}
     */
    public static PiHealth of(Path root, Path data, LongSupplier nanoTime) {
        PiHealth health = new PiHealth(root, data, nanoTime);
        health.threads.forEach(BusThread::start);
        return health;
    }

    PiHealth(Path root, Path data, LongSupplier nanoTime) {
        supply = new WatchedSupply(root, nanoTime);
        disk = new WatchedDisk(data);
        threads = List.of(
                new BusThread("supply", WatchedSupply.PACE_MS, List.of(supply)),
                new BusThread("disk", WatchedDisk.PACE_MS, List.of(disk)));
    }

    /** Looks at both once, on the caller's thread; for tests. */
    void lookOnce() {
        threads.forEach(BusThread::round);
    }

    @Override
    public boolean isVoltageLow() {
        return supply.isLow();
    }

    @Override
    public boolean isDiskNearlyFull() {
        return disk.isNearlyFull();
    }

    /** Asks the threads to end; does not wait for one that hangs. */
    @Override
    public void close() {
        threads.forEach(BusThread::close);
    }
}
