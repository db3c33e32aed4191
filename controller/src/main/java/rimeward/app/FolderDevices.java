package rimeward.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import rimeward.core.reading.Loss;
import rimeward.core.reading.Reading;
import rimeward.core.reading.Senses;
import rimeward.core.reading.SensorReading;
import rimeward.core.reading.Signal;
import rimeward.port.Relays;
import rimeward.port.Sensors;
import rimeward.site.Machine;
import rimeward.site.RelaySet;
import rimeward.site.Sensor;
import rimeward.site.Site;

/**
 * A plain folder in place of sensors and relays, to try the whole service without any: {@code <sensor>/air_C}, {@code
 * <sensor>/rh_percent} and {@code <machine>/power_W} are read, {@code <machine>/closed} is written, 1 or 0.
 */
final class FolderDevices implements Sensors, Relays {
    private final Site site;
    private final Path folder;

    FolderDevices(Site site, Path folder) {
        this.site = site;
        this.folder = folder;
    }

    @Override
    public Senses latch() {
        List<SensorReading> sensors = new ArrayList<>();
        for (Sensor sensor : site.sensors()) {
            Reading rhPercent = sensor.hasHumidity() ? read(sensor.id(), "rh_percent") : Reading.NOT_FITTED;
            sensors.add(new SensorReading(read(sensor.id(), "air_C"), rhPercent));
        }
        List<Reading> powersW = new ArrayList<>();
        for (Machine machine : site.machines()) {
            powersW.add(machine.hasPowerFeedback() ? read(machine.id(), "power_W") : Reading.NOT_FITTED);
        }
        return new Senses(sensors, powersW, Signal.NOT_FITTED, Signal.NOT_FITTED);
    }

    private Reading read(String id, String name) {
        try {
            double value = Double.parseDouble(
                    Files.readString(folder.resolve(id).resolve(name)).strip());
            return Double.isFinite(value) ? new Reading.Value(value, 0) : new Reading.Lost(Loss.FAULT_VALUE);
        } catch (IOException e) {
            return Reading.NO_ANSWER;
        } catch (NumberFormatException e) {
            return new Reading.Lost(Loss.FAULT_VALUE);
        }
    }

    @Override
    public void close(RelaySet set) {
        for (int i = 0; i < site.machines().size(); i++) {
            Path machine = folder.resolve(site.machines().get(i).id());
            try {
                Files.createDirectories(machine);
                Files.writeString(machine.resolve("closed"), set.has(i) ? "1\n" : "0\n");
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }
}
