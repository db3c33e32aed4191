package rimeward.adapter.pi;

import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.LongSupplier;
import java.util.regex.Pattern;
import rimeward.site.Meter;

/**
 * A meter's pulses as the kernel counts them (Documentation/ABI/testing/sysfs-bus-counter; drivers/counter/interrupt-cnt.c, whose count
 * has 32 bits and stands still until 1 is written to {@code enable}).
 */
final class WatchedCounter implements Watched {
    static final long PACE_MS = 500;
    private static final Pattern WHOLE = Pattern.compile("\\d{1,20}");

    /** More between two looks is no meter: the driver was loaded anew. */
    private static final int MOST_AT_ONCE = 1000;

    private final Path root;
    private final Meter.Counter at;
    private final PulsePower power;
    private final LongSupplier nanoTime;
    private OptionalInt last = OptionalInt.empty();

    WatchedCounter(Path root, Meter.Counter at, PulsePower power, LongSupplier nanoTime) {
        this.root = root;
        this.at = at;
        this.power = power;
        this.nanoTime = nanoTime;
    }

    @Override
    public void ask() {
        Path devices = root.resolve("sys/bus/counter/devices");
        Optional<Path> count = Folders.named(devices, at.device()).map(device -> device.resolve("count" + at.count()));
        String text = count.map(folder -> Folders.line(folder.resolve("count"))).orElse("");
        if (!WHOLE.matcher(text).matches()) {
            fail("no counter \"" + at.device() + "\" with a count" + at.count() + " can be read in " + devices);
        } else if (Folders.line(count.orElseThrow().resolve("enable")).equals("0")) {
            fail("it is switched off; at each start of the machine, write 1 to "
                    + count.orElseThrow().resolve("enable"));
        } else {
            count(Long.parseUnsignedLong(text));
        }
    }

    private void count(long nowCount) {
        int low = (int) nowCount; // the driver's own width: differences stay right when it passes its end
        long nowNs = nanoTime.getAsLong();
        int more = last.isPresent() ? low - last.getAsInt() : -1;
        if (more < 0 || more > MOST_AT_ONCE) {
            power.begin(nowNs);
        } else if (more > 0) {
            power.pulses(more, nowNs);
        }
        last = OptionalInt.of(low);
        power.asked(nowNs);
    }

    private void fail(String why) {
        last = OptionalInt.empty();
        power.failed(why);
    }
}
