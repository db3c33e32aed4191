package rimeward.alert;

import java.util.Locale;

/** What a grower is told of, with the words that the Common Alerting Protocol 1.2 has for it. A name that was released is never changed. */
public enum AlertKind {
    FLOOR_CROSSED(
            "The plants are below their minimum",
            Urgency.IMMEDIATE,
            Severity.EXTREME,
            Certainty.OBSERVED,
            Response.EXECUTE),
    HEAT_NOT_ARRIVING("Heat is not arriving", Urgency.IMMEDIATE, Severity.SEVERE, Certainty.LIKELY, Response.EXECUTE),
    FROST_RISK(
            "The night may be colder than the machines can hold",
            Urgency.EXPECTED,
            Severity.SEVERE,
            Certainty.POSSIBLE,
            Response.PREPARE),
    RELAY_WELDED("A relay may be welded", Urgency.IMMEDIATE, Severity.SEVERE, Certainty.LIKELY, Response.EXECUTE),
    TOO_HOT("Too hot: all heat is off", Urgency.IMMEDIATE, Severity.SEVERE, Certainty.OBSERVED, Response.ASSESS),
    BLIND("No inside temperature is known", Urgency.IMMEDIATE, Severity.SEVERE, Certainty.OBSERVED, Response.EXECUTE),
    EXTRA_LOSS(
            "A door may be open or the cover damaged",
            Urgency.IMMEDIATE,
            Severity.SEVERE,
            Certainty.POSSIBLE,
            Response.ASSESS),
    HEAT_LOSS_ROSE(
            "The tunnel loses more heat than it did",
            Urgency.FUTURE,
            Severity.MINOR,
            Certainty.LIKELY,
            Response.ASSESS),
    HEAT_LOSS_FELL(
            "The tunnel loses less heat than it did", Urgency.PAST, Severity.MINOR, Certainty.LIKELY, Response.NONE),
    DOOR_OPEN("The door is open", Urgency.IMMEDIATE, Severity.MODERATE, Certainty.OBSERVED, Response.EXECUTE),
    SENSOR_LOST("A sensor is lost", Urgency.EXPECTED, Severity.MODERATE, Certainty.OBSERVED, Response.ASSESS),
    SENSOR_DOUBTED("A sensor is not believed", Urgency.EXPECTED, Severity.MODERATE, Certainty.LIKELY, Response.ASSESS),
    SENSORS_DISAGREE("Sensors disagree", Urgency.EXPECTED, Severity.MODERATE, Certainty.LIKELY, Response.ASSESS),
    TOO_WET("Wet for long: grey mould", Urgency.EXPECTED, Severity.MODERATE, Certainty.POSSIBLE, Response.ASSESS),
    DRYER_NOT_DRYING("The dryer does not dry", Urgency.EXPECTED, Severity.MODERATE, Certainty.LIKELY, Response.ASSESS),
    TANK_FULL("The dryer's tank is full", Urgency.EXPECTED, Severity.MODERATE, Certainty.OBSERVED, Response.EXECUTE),
    TANK_NEARLY_FULL(
            "The dryer's tank is nearly full", Urgency.EXPECTED, Severity.MINOR, Certainty.LIKELY, Response.PREPARE),
    AIRING(
            "Opening the door would dry the air for nothing",
            Urgency.EXPECTED,
            Severity.MINOR,
            Certainty.OBSERVED,
            Response.EXECUTE),
    LAW_FAILED("The control law fails", Urgency.EXPECTED, Severity.SEVERE, Certainty.OBSERVED, Response.EXECUTE),
    POWER_WAS_CUT("The power was cut", Urgency.PAST, Severity.MODERATE, Certainty.OBSERVED, Response.ASSESS),
    UNDER_VOLTAGE(
            "The computer's voltage is too low",
            Urgency.EXPECTED,
            Severity.MODERATE,
            Certainty.OBSERVED,
            Response.EXECUTE),
    SERVICE_RESTARTED(
            "The controller has started again", Urgency.PAST, Severity.MINOR, Certainty.OBSERVED, Response.MONITOR),
    DOOR_FAILED(
            "A part of the controller fails", Urgency.EXPECTED, Severity.MODERATE, Certainty.OBSERVED, Response.ASSESS),
    RECORD_SET_ASIDE("The record was damaged", Urgency.PAST, Severity.MINOR, Certainty.OBSERVED, Response.MONITOR),
    DISK_NEARLY_FULL(
            "The memory card is nearly full", Urgency.FUTURE, Severity.MINOR, Certainty.OBSERVED, Response.PREPARE),
    CLOCK_NEVER_SET(
            "The time of day is not known", Urgency.FUTURE, Severity.MINOR, Certainty.OBSERVED, Response.ASSESS),
    CLOCK_JUMPED("The clock jumped", Urgency.PAST, Severity.MINOR, Certainty.OBSERVED, Response.MONITOR),
    TICKS_LATE("The controller is slow", Urgency.FUTURE, Severity.MINOR, Certainty.OBSERVED, Response.MONITOR);

    private final String title;
    private final Urgency urgency;
    private final Severity severity;
    private final Certainty certainty;
    private final Response response;

    AlertKind(String title, Urgency urgency, Severity severity, Certainty certainty, Response response) {
        this.title = title;
        this.urgency = urgency;
        this.severity = severity;
        this.certainty = certainty;
        this.response = response;
    }

    public String title() {
        return title;
    }

    /** As it stands in ids and topics: {@code floor-crossed}. */
    public String slug() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public Urgency urgency() {
        return urgency;
    }

    public Severity severity() {
        return severity;
    }

    public Certainty certainty() {
        return certainty;
    }

    public Response response() {
        return response;
    }
}
