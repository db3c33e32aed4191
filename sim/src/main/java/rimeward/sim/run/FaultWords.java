package rimeward.sim.run;

import java.util.List;
import java.util.Locale;
import rimeward.sim.fault.Fault;
import rimeward.sim.scenario.Scenario;

/** Planted faults in words. */
final class FaultWords {
    private FaultWords() {}

    static List<FaultNote> notes(Scenario scenario) {
        long startS = scenario.startEpochS();
        long endS = startS + scenario.lengthS();
        return scenario.faults().faults().stream()
                .map(fault -> new FaultNote(startS + (long) fault.atS(), endS(fault, startS, endS), text(fault)))
                .toList();
    }

    private static long endS(Fault fault, long startS, long lastS) {
        return fault.endsS() >= lastS - startS ? lastS : startS + (long) fault.endsS();
    }

    private static String text(Fault fault) {
        String target = fault.target();
        return switch (fault.kind()) {
            case HEATER_FUSE -> "the heater's fuse is blown";
            case RESIDUAL_CURRENT -> "the residual-current device has cut all machines off";
            case HEATER_RELAY_OPEN -> "the relay of " + target + " does not close";
            case HEATER_RELAY_WELDED -> "the relay of " + target + " is welded shut";
            case HEATER_FAN_STALLED -> "the heater's fan is stalled";
            case DRYER_RELAY_OPEN -> "the dryer's relay does not close";
            case DRYER_RELAY_WELDED -> "the dryer's relay is welded shut";
            case DRYER_TRIP -> "the dryer's protector has tripped";
            case DRYER_ICED -> "the dryer is choked with ice";
            case TANK_FULL -> "the dryer's float is up";
            case HUMIDISTAT_OPEN -> "the dryer's humidistat stays open, as if the air were dry";
            case SENSOR_LOST -> target + " gives no answer";
            case SENSOR_FROZEN -> target + " repeats its last reading";
            case SENSOR_OFFSET -> target + " reads " + signed(fault.magnitude()) + " K wrong";
            case SENSOR_DRIFT -> target + " drifts by " + signed(fault.magnitude()) + " K a day";
            case SENSOR_SPIKE -> target + " jumps now and then by up to " + number(fault.magnitude()) + " K";
            case SENSOR_NOISE -> target + " is noisy by " + number(fault.magnitude()) + " K";
            case SENSOR_WET -> "dew lies on " + target;
            case HUMIDITY_LOST -> target + " gives no humidity";
            case OUTSIDE_SENSOR_LOST -> "the outside sensor gives no answer";
            case POWER_FEEDBACK_LOST -> "no meter answers";
            case POWER_CUT -> "the power is cut";
            case CONTROLLER_RESTART -> "the controller restarts";
            case DOOR_OPEN -> "the door stands open";
            case COVER_TORN -> "the cover is torn, " + number(fault.magnitude()) + " m²";
            case CLOCK_JUMP -> "the clock on the wall jumps by " + signed(fault.magnitude()) + " s";
            case FORECAST_LOST -> "no forecast comes";
        };
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }

    private static String signed(double value) {
        return String.format(Locale.ROOT, "%+.1f", value);
    }
}
