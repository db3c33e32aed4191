package rimeward.sim.weather;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** Units that weather records use, and how a value in one becomes a value in ours: {@code value × factor + offset}. */
enum Unit {
    CELSIUS(Kind.TEMPERATURE, 1, 0, "°C, C"),
    FAHRENHEIT(Kind.TEMPERATURE, 5.0 / 9, -160.0 / 9, "°F, F"),
    KELVIN(Kind.TEMPERATURE, 1, -273.15, "K"),
    METRES_PER_SECOND(Kind.SPEED, 1, 0, "m/s"),
    KILOMETRES_PER_HOUR(Kind.SPEED, 1 / 3.6, 0, "km/h"),
    MILES_PER_HOUR(Kind.SPEED, 0.44704, 0, "mph"),
    KNOTS(Kind.SPEED, 1852.0 / 3600, 0, "kn, kt, knots"),
    PASCAL(Kind.PRESSURE, 1, 0, "Pa"),
    HECTOPASCAL(Kind.PRESSURE, 100, 0, "hPa, mbar"),
    KILOPASCAL(Kind.PRESSURE, 1000, 0, "kPa"),
    PERCENT(Kind.FRACTION, 0.01, 0, "%"),
    FRACTION(Kind.FRACTION, 1, 0, "fraction"),
    OKTAS(Kind.FRACTION, 1 / 8.0, 0, "oktas"),
    TENTHS(Kind.FRACTION, 0.1, 0, "tenths"),
    WATTS_PER_SQUARE_METRE(Kind.RADIATION, 1, 0, "W/m², W/m2");

    /** What can be turned into each other. */
    enum Kind {
        TEMPERATURE,
        SPEED,
        PRESSURE,
        FRACTION,
        RADIATION;

        /** How the units of this kind are written. */
        String spellings() {
            return Arrays.stream(Unit.values())
                    .filter(unit -> unit.kind == this)
                    .map(unit -> unit.spellings)
                    .collect(Collectors.joining(", "));
        }
    }

    private final Kind kind;
    private final double factor;
    private final double offset;
    private final String spellings; // the first is ours

    Unit(Kind kind, double factor, double offset, String spellings) {
        this.kind = kind;
        this.factor = factor;
        this.offset = offset;
        this.spellings = spellings;
    }

    /** The unit so written, which must measure this kind of thing. */
    static Unit parse(String text, Kind kind) {
        for (Unit unit : values()) {
            if (unit.kind == kind && List.of(unit.spellings.split(", ")).contains(text)) {
                return unit;
            }
        }
        throw new IllegalArgumentException("\"" + text + "\" is not a unit here; use one of " + kind.spellings());
    }

    double toOurs(double value) {
        return value * factor + offset;
    }

    double fromOurs(double value) {
        return (value - offset) / factor;
    }

    String spelling() {
        return spellings.split(",", 2)[0];
    }
}
