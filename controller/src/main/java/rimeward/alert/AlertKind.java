package rimeward.alert;

/** What a grower is told of. */
public enum AlertKind {
    FLOOR_CROSSED("The plants are below their minimum"),
    HEAT_NOT_ARRIVING("Heat is not arriving"),
    RELAY_WELDED("A relay may be welded"),
    TOO_HOT("Too hot: all heat is off"),
    BLIND("No inside temperature is known"),
    SENSOR_DOUBTED("A sensor is not believed"),
    DRYER_NOT_DRYING("The dryer does not dry"),
    TANK_FULL("The dryer's tank is full"),
    AIRING("Opening the door would dry the air for nothing"),
    LAW_FAILED("The control law fails"),
    POWER_WAS_CUT("The power was cut"),
    SERVICE_RESTARTED("The controller has started again"),
    DOOR_FAILED("A part of the controller fails"),
    RECORD_SET_ASIDE("The record was damaged"),
    CLOCK_JUMPED("The clock jumped"),
    TICKS_LATE("The controller is slow");

    private final String title;

    AlertKind(String title) {
        this.title = title;
    }

    public String title() {
        return title;
    }
}
