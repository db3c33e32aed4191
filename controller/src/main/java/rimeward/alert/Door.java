package rimeward.alert;

/** A part of the controller that reaches outside, and may fail without stopping control. */
public enum Door {
    SENSORS("sensors"),
    FORECAST("forecast"),
    RELAYS("relays"),
    JOURNAL("journal"),
    KEEP("keep"),
    COURIER("courier");

    private final String subject;

    Door(String subject) {
        this.subject = subject;
    }

    /** In the words that the grower reads. */
    public String subject() {
        return subject;
    }
}
