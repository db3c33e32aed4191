package rimeward.report;

/**
 * One line of the log.
 *
 * @param epochS when, s since 1970 UTC
 * @param kind what sort of line; the style sheet knows it
 * @param what in a few words
 * @param why the reason, or what was said; may be empty
 */
public record LogEntry(long epochS, Kind kind, String what, String why) {
    /** In the order in which lines of one second stand. */
    public enum Kind {
        FAULT,
        POWER,
        DOOR,
        SWITCH,
        DUTY,
        ALERT
    }
}
