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
import rimeward.site.Contact;
import rimeward.site.Drying;
import rimeward.site.Machine;
import rimeward.site.RelaySet;
import rimeward.site.Sensor;
import rimeward.site.Site;

/**
 * A plain folder in place of sensors and relays, to try the whole service without any: {@code <sensor>/air_C}, {@code
 * <sensor>/rh_percent}, {@code <machine>/power_W}, {@code <dryer>/tank_full} and {@code door/open} are read, {@code <machine>/closed}
 * is written; what is so or not is 1 or 0.
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
        return new Senses(sensors, powersW, tankFull(), signal(site.door(), "door", "open"));
    }

    private Signal tankFull() {
        return site.drying() instanceof Drying.Dryer dryer
                ? signal(dryer.tankFloat(), dryer.machine().id(), "tank_full")
                : Signal.NOT_FITTED;
    }

    private Signal signal(Contact contact, String id, String name) {
        if (!contact.isFitted()) {
            return Signal.NOT_FITTED;
        }
        return read(id, name) instanceof Reading.Value value
                ? (value.value() != 0 ? Signal.ON : Signal.OFF)
                : Signal.LOST;
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

    /** Tries every machine before it tells of one that failed. */
    @Override
    public void close(RelaySet set) {
        List<IOException> failures = new ArrayList<>();
        for (int i = 0; i < site.machines().size(); i++) {
            Path machine = folder.resolve(site.machines().get(i).id());
            try {
                Files.createDirectories(machine);
                Files.writeString(machine.resolve("closed"), set.has(i) ? "1\n" : "0\n");
            } catch (IOException e) {
                failures.add(e);
            }
        }
        if (!failures.isEmpty()) {
            throw new UncheckedIOException(failures.get(0));
        }
    }
}
