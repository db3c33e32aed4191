package rimeward.core.reading;

/** A contact: a tank float, a door switch. */
public enum Signal {
    NOT_FITTED,
    /** Fitted, but gave no answer. */
    LOST,
    OFF,
    ON
}
