package rimeward.sim.fault;

import java.util.Locale;

/** Everything that can be made to go wrong. */
public enum FaultKind {
    /** The heater's fuse has blown: no stage draws power. */
    HEATER_FUSE(Scope.SITE),
    /** The residual-current device has tripped: no machine draws power; the controller hangs elsewhere and lives. */
    RESIDUAL_CURRENT(Scope.SITE),
    /** The relay of a heater stage does not close. */
    HEATER_RELAY_OPEN(Scope.MACHINE),
    /** The relay of a heater stage does not open. */
    HEATER_RELAY_WELDED(Scope.MACHINE),
    HEATER_FAN_STALLED(Scope.SITE),
    DRYER_RELAY_OPEN(Scope.SITE),
    DRYER_RELAY_WELDED(Scope.SITE),
    /** The dryer's own protector has tripped. */
    DRYER_TRIP(Scope.SITE),
    /** The dryer is choked with ice: it draws power for nothing. */
    DRYER_ICED(Scope.SITE),
    /** The dryer's float is up. */
    TANK_FULL(Scope.SITE),
    /** The dryer's humidistat stays open, as if the air were dry. */
    HUMIDISTAT_OPEN(Scope.SITE),
    /** A sensor, inside or outside, gives no answer. */
    SENSOR_LOST(Scope.SENSOR),
    /** A sensor repeats its last reading. */
    SENSOR_FROZEN(Scope.SENSOR),
    /** A sensor lies by a constant, K. */
    SENSOR_OFFSET(Scope.SENSOR, "K", -30, 30, 3),
    /** A sensor's error grows, K a day. */
    SENSOR_DRIFT(Scope.SENSOR, "K/day", -20, 20, 1),
    /** A sensor jumps now and then, by up to so many K. */
    SENSOR_SPIKE(Scope.SENSOR, "K", 0, 200, 20),
    /** A sensor is noisier, by a standard deviation in K. */
    SENSOR_NOISE(Scope.SENSOR, "K", 0, 10, 1),
    /** Dew on a sensor: it reads the wet bulb, and saturation. */
    SENSOR_WET(Scope.SENSOR),
    /** A sensor's humidity gives no answer; its temperature does. */
    HUMIDITY_LOST(Scope.SENSOR),
    OUTSIDE_SENSOR_LOST(Scope.SITE),
    POWER_FEEDBACK_LOST(Scope.SITE),
    /** No mains for anything, the controller included. */
    POWER_CUT(Scope.SITE),
    /** The controller restarts, and has only its saved state. */
    CONTROLLER_RESTART(Scope.MOMENT),
    DOOR_OPEN(Scope.SITE),
    /** A hole in the cover, m². */
    COVER_TORN(Scope.SITE, "m2", 0, 100, 0.1),
    /** The clock on the wall jumps, s. */
    CLOCK_JUMP(Scope.MOMENT, "s", -1e8, 1e8, -3600),
    FORECAST_LOST(Scope.SITE);

    /** What a fault of this kind is about. */
    enum Scope {
        SITE,
        MACHINE,
        SENSOR,
        /** The site, for a moment only. */
        MOMENT
    }

    private final Scope scope;
    private final String unit;
    private final double least;
    private final double most;
    private final double usual;

    FaultKind(Scope scope) {
        this(scope, "", 0, 0, 0);
    }

    FaultKind(Scope scope, String unit, double least, double most, double usual) {
        this.scope = scope;
        this.unit = unit;
        this.least = least;
        this.most = most;
        this.usual = usual;
    }

    /** As people write it, such as {@code heater-fuse}. */
    public String label() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** @throws IllegalArgumentException if there is no such kind; the message names them all */
    public static FaultKind ofLabel(String label) {
        StringBuilder known = new StringBuilder();
        for (FaultKind kind : values()) {
            if (kind.label().equals(label)) {
                return kind;
            }
            known.append(known.isEmpty() ? "" : ", ").append(kind.label());
        }
        throw new IllegalArgumentException("no fault kind \"" + label + "\"; there are " + known);
    }

    /** Whether it needs to be told which machine or sensor. */
    public boolean needsTarget() {
        return scope == Scope.MACHINE || scope == Scope.SENSOR;
    }

    /** Whether that is a sensor. */
    public boolean isOfSensor() {
        return scope == Scope.SENSOR;
    }

    /** Whether it happens at a moment and does not last. */
    public boolean isMomentary() {
        return scope == Scope.MOMENT;
    }

    /** Unit of its magnitude, empty if it has none. */
    public String unit() {
        return unit;
    }

    public double leastMagnitude() {
        return least;
    }

    public double mostMagnitude() {
        return most;
    }

    /** Magnitude when none is given. */
    public double usualMagnitude() {
        return usual;
    }
}
