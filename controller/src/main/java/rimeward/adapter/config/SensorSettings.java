package rimeward.adapter.config;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rimeward.site.Attached;
import rimeward.site.Place;
import rimeward.site.Sensor;
import rimeward.site.SensorLimits;

/** Reads the {@code [[sensor]]} tables. */
final class SensorSettings {
    private SensorSettings() {}

    static Optional<List<Sensor>> read(TableReader top) {
        List<TableReader> tables = top.someTables("sensor", "at least one must hang inside");
        List<Sensor> sensors = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        Set<Object> used = new HashSet<>();
        for (TableReader table : tables) {
            sensor(table).ifPresent(sensor -> {
                sensors.add(sensor);
                if (!ids.add(sensor.id())) {
                    table.fault("id", "is the name of another sensor too", "give each its own");
                }
                boolean real = !(sensor.attached() instanceof Attached.NotAttached);
                if (real && !used.add(seat(sensor.attached()))) {
                    table.fault("attached", "is where another sensor sits too", "give each its own");
                }
            });
        }
        boolean allRead = !tables.isEmpty() && sensors.size() == tables.size();
        if (allRead && sensors.stream().noneMatch(sensor -> sensor.place().isInside())) {
            top.fault("sensor", "has none inside", "hang one among the plants and give it bench = \"…\"");
        }
        return allRead ? Optional.of(sensors) : Optional.empty();
    }

    /** An address on a bus is one chip's, whoever asks it: the kernel's driver keeps it from this program. */
    private static Object seat(Attached attached) {
        return attached instanceof Attached.I2c at ? new Attached.Hwmon(at.bus(), at.address()) : attached;
    }

    private static Optional<Sensor> sensor(TableReader table) {
        String id = table.get("id", Kinds.id());
        Place place = place(table);
        boolean hasHumidity = table.get("humidity", Kinds.yesNo());
        double uncertaintyK = table.get("uncertainty_K", Kinds.number(0, 3));
        Kind<Double> percent = Kinds.number(0, 15);
        double uncertaintyPercent = hasHumidity
                ? table.get("uncertainty_percent", percent)
                : table.get("uncertainty_percent", percent, 0.0);
        SensorLimits limits =
                table.findTable("limits").map(SensorSettings::limits).orElse(SensorLimits.defaults());
        Attached attached = AttachedTable.read(table, hasHumidity);
        return table.whenSound(
                () -> new Sensor(id, place, hasHumidity, uncertaintyK, uncertaintyPercent, limits, attached));
    }

    private static Place place(TableReader table) {
        boolean outside = table.get("outside", Kinds.yesNo(), false);
        if (!outside) {
            return new Place.Bench(table.get("bench", Kinds.text()));
        }
        if (table.has("bench")) {
            table.fault("bench", "contradicts outside = true", "keep one of the two");
        }
        return new Place.Outside();
    }

    private static SensorLimits limits(TableReader table) {
        SensorLimits usual = SensorLimits.defaults();
        return new SensorLimits(
                table.celsius("least", -80, 0, usual.leastC()),
                table.celsius("most", 30, 125, usual.mostC()),
                table.get("rate_K_per_min", Kinds.number(0.5, 60), usual.rateKPerMin()),
                table.get("frozen_after_s", Kinds.number(300, 86_400), usual.frozenAfterS()),
                table.get("max_age_s", Kinds.number(5, 3600), usual.maxAgeS()),
                table.get("disagreement_K", Kinds.number(0.5, 20), usual.disagreementK()));
    }
}
