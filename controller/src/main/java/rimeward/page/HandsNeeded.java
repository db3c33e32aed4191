package rimeward.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import rimeward.alert.AlertKind;
import rimeward.alert.Response;

/** What needs a person: alerts with something to do, the worst first, those that nobody knows of before the others. */
final class HandsNeeded {
    private HandsNeeded() {}

    static List<Map<String, Object>> of(Sight sight) {
        List<Map<String, Object>> all = new ArrayList<>();
        for (boolean known : new boolean[] {false, true}) {
            sight.alerts().stream()
                    .filter(alert ->
                            alert.acknowledged() == known && alert.kind().response() != Response.MONITOR)
                    .map(HandsNeeded::one)
                    .forEach(all::add);
        }
        return all;
    }

    private static Map<String, Object> one(StandingAlert alert) {
        return new Members()
                .put("what", what(alert.kind()))
                .put("sentence", alert.text())
                .put("incident", alert.incident())
                .word("severity", alert.kind().severity())
                .map();
    }

    private static String what(AlertKind kind) {
        return switch (kind) {
            case TANK_FULL, TANK_NEARLY_FULL -> "tank";
            case AIRING -> "air";
            case HEAT_NOT_ARRIVING,
                    RELAY_WELDED,
                    SENSOR_LOST,
                    SENSOR_DOUBTED,
                    SENSORS_DISAGREE,
                    DRYER_NOT_DRYING,
                    LAW_FAILED,
                    UNDER_VOLTAGE,
                    DOOR_FAILED,
                    DISK_NEARLY_FULL,
                    CLOCK_NEVER_SET -> "mend";
            default -> "alert";
        };
    }
}
