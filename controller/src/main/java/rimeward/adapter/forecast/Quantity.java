package rimeward.adapter.forecast;

import java.util.List;
import java.util.Optional;

/** What a column of a forecast's table may hold, and in which units; ours are °C, %, m/s, and the share of the sky covered. */
enum Quantity {
    AIR("air", "°C", "°F"),
    DEW_POINT("dew-point", "°C", "°F"),
    HUMIDITY("humidity", "%", "fraction"),
    WIND("wind", "m/s", "km/h", "mph", "kn"),
    CLOUD("cloud", "fraction", "%", "oktas", "tenths");

    /** A value in the unit, times factor, plus offset, is in ours. */
    record Unit(double factor, double offset) {}

    private final String word;
    private final String units;

    Quantity(String word, String... units) {
        this.word = word;
        this.units = String.join(", ", units);
    }

    String word() {
        return word;
    }

    /** For people. */
    String units() {
        return units;
    }

    /** Empty where the quantity is not told in it. */
    Optional<Unit> unit(String name) {
        return List.of(units.split(", ")).contains(name) ? Optional.of(unit(this, name)) : Optional.empty();
    }

    private static Unit unit(Quantity quantity, String name) {
        return switch (name) {
            case "°F" -> new Unit(1 / 1.8, -32 / 1.8);
            case "km/h" -> new Unit(1 / 3.6, 0);
            case "mph" -> new Unit(0.44704, 0); // the international mile, exactly
            case "kn" -> new Unit(1852 / 3600.0, 0); // the nautical mile, exactly
            case "oktas" -> new Unit(1 / 8.0, 0);
            case "tenths" -> new Unit(1 / 10.0, 0);
            case "%" -> new Unit(quantity == HUMIDITY ? 1 : 1 / 100.0, 0);
            case "fraction" -> new Unit(quantity == HUMIDITY ? 100 : 1, 0);
            default -> new Unit(1, 0);
        };
    }
}
