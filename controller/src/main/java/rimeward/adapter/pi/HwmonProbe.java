package rimeward.adapter.pi;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import rimeward.core.reading.Loss;
import rimeward.core.reading.Reading;
import rimeward.core.reading.SensorReading;
import rimeward.site.Attached;

/**
 * A chip that a hwmon driver reads. The sht3x driver of kernels from 6.6 until a fix in 6.18 hands out the error's number as a
 * temperature (−121, "remote I/O error", shows as −0.121 °C; which kernels, from memory): whatever of its readings could be an
 * error's number is not believed.
 */
record HwmonProbe(Path root, Attached.Hwmon at) implements Probe {
    private static final double HIGHEST_ERRNO_K = 0.133; // EHWPOISON, include/uapi/asm-generic/errno.h

    @Override
    public SensorReading read() {
        Path device =
                root.resolve(String.format(Locale.ROOT, "sys/bus/i2c/devices/%d-%04x/hwmon", at.bus(), at.address()));
        Optional<Path> chip = Folders.starting(device, "hwmon");
        if (chip.isEmpty()) {
            return new SensorReading(Reading.NO_ANSWER, Reading.NO_ANSWER);
        }
        Reading airC = Milli.read(chip.get().resolve("temp1_input"));
        Reading rhPercent = Milli.read(chip.get().resolve("humidity1_input"));
        boolean sht3x = Folders.line(chip.get().resolve("name")).equals("sht3x");
        if (sht3x && (mayBeErrno(airC) || mayBeErrno(rhPercent))) {
            Reading fault = new Reading.Lost(Loss.FAULT_VALUE);
            return new SensorReading(fault, fault);
        }
        return new SensorReading(airC, Milli.clamped(rhPercent));
    }

    private static boolean mayBeErrno(Reading reading) {
        return reading instanceof Reading.Value some && some.value() < 0 && some.value() >= -HIGHEST_ERRNO_K;
    }
}
