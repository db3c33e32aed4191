package rimeward.adapter.config;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import rimeward.site.Attached;

/** Reads a sensor's {@code attached} table; without one nothing is attached. */
final class AttachedTable {
    private enum By {
        I2C_SHT3X,
        I2C_SHT4X,
        HWMON,
        ONE_WIRE,
        IIO,
        HANDED_IN
    }

    private AttachedTable() {}

    static Attached read(TableReader sensor, boolean hasHumidity) {
        Optional<TableReader> table = sensor.findTable("attached");
        if (table.isEmpty()) {
            return new Attached.NotAttached();
        }
        By by = table.get().get("by", Kinds.word(words()));
        if (by == By.ONE_WIRE && hasHumidity) {
            sensor.fault("humidity", "cannot come from a 1-Wire thermometer", "set humidity = false");
        }
        return attached(table.get(), by).orElse(new Attached.NotAttached());
    }

    private static Optional<Attached> attached(TableReader table, By by) {
        return switch (by) {
            case I2C_SHT3X -> i2c(table, Attached.Chip.SHT3X);
            case I2C_SHT4X -> i2c(table, Attached.Chip.SHT4X);
            case HWMON -> {
                int bus = bus(table);
                int address = address(table);
                yield table.<Attached>whenSound(() -> new Attached.Hwmon(bus, address));
            }
            case ONE_WIRE -> {
                String device = table.get("device", oneWireName());
                yield table.<Attached>whenSound(() -> new Attached.OneWire(device));
            }
            case IIO -> {
                String device = table.get("device", Kinds.text());
                yield table.<Attached>whenSound(() -> new Attached.Iio(device));
            }
            case HANDED_IN -> {
                String topic = table.get("topic", Kinds.text());
                yield table.<Attached>whenSound(() -> new Attached.HandedIn(topic));
            }
        };
    }

    private static Optional<Attached> i2c(TableReader table, Attached.Chip chip) {
        int bus = bus(table);
        int address = address(table);
        return table.<Attached>whenSound(() -> new Attached.I2c(chip, bus, address));
    }

    private static int bus(TableReader table) {
        return table.get("bus", Kinds.whole(0, 255));
    }

    private static int address(TableReader table) {
        return table.get("address", Kinds.whole(0x08, 0x77));
    }

    private static Kind<String> oneWireName() {
        String expected = "the name of a DS18B20's folder in quotes, \"28-0123456789ab\"";
        return new Kind<>(expected, "28-000000000000", value -> {
            if (value instanceof String name && Attached.OneWire.isName(name)) {
                return name;
            }
            throw new Misread("must be " + expected, "look into /sys/bus/w1/devices");
        });
    }

    private static Map<String, By> words() {
        Map<String, By> words = new LinkedHashMap<>();
        words.put("i2c-sht3x", By.I2C_SHT3X);
        words.put("i2c-sht4x", By.I2C_SHT4X);
        words.put("hwmon", By.HWMON);
        words.put("one-wire", By.ONE_WIRE);
        words.put("iio", By.IIO);
        words.put("handed-in", By.HANDED_IN);
        return words;
    }
}
