package rimeward.sim.weather;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * What a column of a weather record may hold, with the limits beyond which a value is rejected. Limits are in our units: °C,
 * m/s, Pa, fraction, W/m².
 *
 * <p>Limits are a little inside what {@link WeatherSample} can hold, and outside anything measured where people garden. A
 * spike is a value that leaves both its neighbours on the same side by more than the spike limit: common practice, no
 * source.
 */
enum Quantity {
    AIR(Unit.Kind.TEMPERATURE, -55, 55, 10),
    DEW_POINT(Unit.Kind.TEMPERATURE, -60, 40, 10),
    HUMIDITY(Unit.Kind.FRACTION, 0.01, 1, 1),
    WIND(Unit.Kind.SPEED, 0, 60, 15),
    PRESSURE(Unit.Kind.PRESSURE, 52_000, 109_000, 1500),
    SEA_LEVEL_PRESSURE(Unit.Kind.PRESSURE, 87_000, 109_000, 1500),
    CLOUD(Unit.Kind.FRACTION, 0, 1, 1),
    RADIATION(Unit.Kind.RADIATION, 0, 1450, 1450),
    LOWEST_AIR(Unit.Kind.TEMPERATURE, -55, 45, 100),
    HIGHEST_AIR(Unit.Kind.TEMPERATURE, -55, 55, 100);

    final Unit.Kind kind;
    final double lowest;
    final double highest;
    final double spike;

    Quantity(Unit.Kind kind, double lowest, double highest, double spike) {
        this.kind = kind;
        this.lowest = lowest;
        this.highest = highest;
        this.spike = spike;
    }

    /** As written in settings and in headers: {@code dew-point}. */
    String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** How much longer than the stated gap a column may be silent: pressure moves slowly, and the tunnel hardly feels it. */
    int patience() {
        return this == PRESSURE || this == SEA_LEVEL_PRESSURE ? 4 : 1;
    }

    /** Whether a file without it may be used with one value throughout. */
    boolean canBeAssumed() {
        return this == WIND || this == CLOUD;
    }

    static boolean isKey(String key) {
        return Arrays.stream(values()).anyMatch(quantity -> quantity.key().equals(key));
    }

    static Quantity parse(String key) {
        for (Quantity quantity : values()) {
            if (quantity.key().equals(key)) {
                return quantity;
            }
        }
        throw new IllegalArgumentException("\"" + key + "\" is no weather quantity; use one of " + keys());
    }

    static String keys() {
        return Arrays.stream(values()).map(Quantity::key).collect(Collectors.joining(", "));
    }
}
