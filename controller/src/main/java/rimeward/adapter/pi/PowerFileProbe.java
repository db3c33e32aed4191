package rimeward.adapter.pi;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import rimeward.core.reading.Loss;
import rimeward.core.reading.Reading;
import rimeward.site.Meter;

/**
 * A power chip that the kernel reads: hwmon gives whole microwatts (Documentation/hwmon/sysfs-interface), industrial I/O milliwatts
 * once offset and scale are applied (Documentation/ABI/testing/sysfs-bus-iio, in_powerY_raw).
 */
record PowerFileProbe(Path root, Meter.PowerFile at) {
    private static final Pattern PLACE = Pattern.compile("\\d+-[0-9a-f]{4}");
    private static final Pattern NUMBER = Pattern.compile("-?\\d{1,15}(\\.\\d{1,15})?");

    /** The power, W, with an age of 0, or why there is none. May take its time. */
    Reading read() {
        String power = "power" + at.channel();
        return switch (at.driver()) {
            case HWMON -> scaled(folder().map(chip -> number(chip.resolve(power + "_input"))), 1e-6);
            case IIO -> scaled(folder().map(chip -> milliwatts(chip, "in_" + power)), 1e-3);
        };
    }

    private static Reading scaled(Optional<Reading> reading, double unitW) {
        Reading some = reading.orElse(Reading.NO_ANSWER);
        return some instanceof Reading.Value value ? new Reading.Value(value.value() * unitW, 0) : some;
    }

    /** The chip's folder; none where several carry its name, for then nobody knows which is meant. */
    private Optional<Path> folder() {
        if (at.driver() == Meter.Driver.HWMON && PLACE.matcher(at.device()).matches()) {
            return Folders.starting(
                    root.resolve("sys/bus/i2c/devices").resolve(at.device()).resolve("hwmon"), "hwmon");
        }
        Path all = root.resolve(at.driver() == Meter.Driver.HWMON ? "sys/class/hwmon" : "sys/bus/iio/devices");
        List<Path> named = Folders.in(all).stream()
                .filter(chip -> Folders.line(chip.resolve("name")).equals(at.device()))
                .toList();
        return named.size() == 1 ? Optional.of(named.get(0)) : Optional.empty();
    }

    private static Reading milliwatts(Path chip, String stem) {
        Path ready = chip.resolve(stem + "_input");
        if (Files.exists(ready)) {
            return number(ready);
        }
        Reading raw = number(chip.resolve(stem + "_raw"));
        Reading scale = number(chip.resolve(stem + "_scale"));
        Path offsetFile = chip.resolve(stem + "_offset");
        Reading offset = Files.exists(offsetFile) ? number(offsetFile) : new Reading.Value(0, 0);
        if (raw instanceof Reading.Value r && scale instanceof Reading.Value s && offset instanceof Reading.Value o) {
            return new Reading.Value((r.value() + o.value()) * s.value(), 0);
        }
        return raw instanceof Reading.Lost ? raw : Reading.NO_ANSWER;
    }

    private static Reading number(Path file) {
        try {
            String text = Files.readString(file, StandardCharsets.US_ASCII).strip();
            return NUMBER.matcher(text).matches()
                    ? new Reading.Value(Double.parseDouble(text), 0)
                    : new Reading.Lost(text.isEmpty() ? Loss.NO_ANSWER : Loss.FAULT_VALUE);
        } catch (IOException e) {
            return Reading.NO_ANSWER;
        }
    }
}
