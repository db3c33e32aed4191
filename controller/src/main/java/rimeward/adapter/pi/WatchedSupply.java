package rimeward.adapter.pi;

import java.nio.file.Path;
import java.util.OptionalLong;
import java.util.function.LongSupplier;

/**
 * The computer's supply. A Pi's firmware notes under-voltage; its kernel asks every 2 s whether there was any since it last asked, and shows
 * that as {@code in0_lcrit_alarm} of the hwmon chip {@code rpi_volt} (drivers/hwmon/raspberrypi-hwmon.c). A computer without that chip is
 * taken to be well fed.
 */
final class WatchedSupply implements Watched {
    static final long PACE_MS = 1_000;

    /** A dip lasts moments and is not the last one: so long it counts, ns. Own choice. */
    private static final long COUNTS_NS = 60_000_000_000L;

    private final Path chips;
    private final LongSupplier nanoTime;
    private OptionalLong seenNs = OptionalLong.empty();
    private volatile boolean low;

    WatchedSupply(Path root, LongSupplier nanoTime) {
        chips = root.resolve("sys/class/hwmon");
        this.nanoTime = nanoTime;
    }

    @Override
    public void ask() {
        boolean alarm = Folders.named(chips, "rpi_volt")
                .map(chip -> Folders.line(chip.resolve("in0_lcrit_alarm")).equals("1"))
                .orElse(false);
        long nowNs = nanoTime.getAsLong();
        if (alarm) {
            seenNs = OptionalLong.of(nowNs);
        }
        low = seenNs.isPresent() && nowNs - seenNs.getAsLong() < COUNTS_NS;
    }

    boolean isLow() {
        return low;
    }
}
