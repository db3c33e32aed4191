package rimeward.alert;

/** A part of the controller that reaches outside, and may fail without stopping control. */
public enum Door {
    SENSORS(
            "sensors",
            "No sensor can be read, and the heater runs by the outside temperature last known. Look at the log; if it"
                    + " stays, switch the controller off and on."),
    FORECAST("forecast", "There is no forecast; control goes on without one. Look at the log."),
    RELAYS(
            "relays",
            "A relay does not do as it is told. Look at the log for which one: another program may hold its line, or a"
                    + " wire be loose. Until then the machine's own thermostat is all there is."),
    JOURNAL(
            "record",
            "Nothing can be written down; control goes on. Make room on the memory card or replace it: the record then"
                    + " goes on by itself."),
    KEEP(
            "saved state",
            "What control knows cannot be kept, and a restart would forget it; control goes on. Look at the log."),
    ORDERS("orders", "What you ask for may not be heard; control goes on without. Look at the log."),
    COURIER("messages", "Alerts may not reach you. Look at the log; if it stays, switch the controller off and on.");

    private final String subject;
    private final String advice;

    Door(String subject, String advice) {
        this.subject = subject;
        this.advice = advice;
    }

    /** In the words that the grower reads. */
    public String subject() {
        return subject;
    }

    /** What its failing means, and the one thing to do. */
    String advice() {
        return advice;
    }

    /** @throws IllegalArgumentException if there is no such door */
    static Door of(String subject) {
        for (Door door : values()) {
            if (door.subject.equals(subject)) {
                return door;
            }
        }
        throw new IllegalArgumentException("no part is called " + subject);
    }
}
