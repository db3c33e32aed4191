package rimeward.adapter.pi;

import java.nio.file.Path;
import java.util.Optional;
import rimeward.core.reading.Reading;
import rimeward.core.reading.SensorReading;
import rimeward.site.Attached;

/** A DHT22 or BME280 behind the kernel's industrial I/O. A DHT22's time-outs are normal: the driver's read fails, the next one works. */
record IioProbe(Path root, Attached.Iio at) implements Probe {
    @Override
    public SensorReading read() {
        Optional<Path> device = Folders.named(root.resolve("sys/bus/iio/devices"), at.device());
        if (device.isEmpty()) {
            return new SensorReading(Reading.NO_ANSWER, Reading.NO_ANSWER);
        }
        return new SensorReading(
                Milli.read(device.get().resolve("in_temp_input")),
                Milli.clamped(Milli.read(device.get().resolve("in_humidityrelative_input"))));
    }
}
