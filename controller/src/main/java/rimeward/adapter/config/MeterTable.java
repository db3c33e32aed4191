package rimeward.adapter.config;

import java.util.Optional;
import rimeward.site.Meter;

/** Reads a machine's {@code power_feedback} and the {@code meter} table that says how it comes in. */
final class MeterTable {
    private enum By {
        PULSES,
        COUNTER,
        CONTACT,
        HWMON,
        IIO
    }

    private MeterTable() {}

    /** What is seen of the machine; a meter that cannot be built is a fault of its table. */
    static Meter read(TableReader machine, double ratedW) {
        boolean fitted = machine.get("power_feedback", Kinds.yesNo());
        Optional<TableReader> table = machine.findTable("meter");
        if (table.isEmpty()) {
            return fitted ? new Meter.NotAttached() : new Meter.NotFitted();
        }
        if (!fitted) {
            machine.fault("power_feedback", "contradicts the table meter below it", "set it true, or remove the table");
        }
        By by = table.get().get("by", Kinds.word(By.class));
        return meter(table.get(), by, ratedW).orElse(new Meter.NotAttached());
    }

    private static Optional<Meter> meter(TableReader table, By by, double ratedW) {
        return switch (by) {
            case PULSES -> {
                double pulsesPerKWh = pulsesPerKWh(table, ratedW);
                yield InputTable.read(table, "a pulse lasts").map(at -> new Meter.Pulses(at, pulsesPerKWh));
            }
            case COUNTER -> {
                String device = table.get("device", Kinds.text());
                int count = table.get("count", Kinds.whole(0, 63));
                double pulsesPerKWh = pulsesPerKWh(table, ratedW);
                yield table.<Meter>whenSound(() -> new Meter.Counter(device, count, pulsesPerKWh));
            }
            case CONTACT -> InputTable.read(table, "the machine has power").map(Meter.Running::new);
            case HWMON -> powerFile(table, Meter.Driver.HWMON);
            case IIO -> powerFile(table, Meter.Driver.IIO);
        };
    }

    private static Optional<Meter> powerFile(TableReader table, Meter.Driver driver) {
        String device = table.get("device", Kinds.text());
        int channel = table.get("channel", Kinds.whole(0, 63));
        return table.whenSound(() -> new Meter.PowerFile(driver, device, channel));
    }

    /** Too few pulses tell too late that a machine gives nothing. */
    private static double pulsesPerKWh(TableReader table, double ratedW) {
        double pulsesPerKWh = table.get("pulses_per_kWh", Kinds.number(1, 100_000));
        double fewest = Meter.fewestPulsesPerKWh(ratedW);
        if (table.isSound() && pulsesPerKWh < fewest) {
            table.fault(
                    "pulses_per_kWh",
                    "gives a pulse in " + Shown.number(StrictMath.ceil(3.6e6 / (ratedW * pulsesPerKWh)))
                            + " s at rated_W = " + Shown.number(ratedW) + ", and one is needed every "
                            + Shown.number(Meter.MOST_SPACING_S) + " s to notice a machine that gives nothing",
                    "fit a meter with at least " + Shown.number(StrictMath.ceil(fewest))
                            + " pulses, or use by = \"contact\"");
        }
        return pulsesPerKWh;
    }
}
