package rimeward.adapter.journal;

/**
 * Something is wrong with the record, or is right again. Told once each; control goes on whatever it is.
 *
 * @param over true when it is right again
 * @param text what, where, and what to do
 */
public record Trouble(Kind kind, boolean over, String text) {
    /** What may be wrong. */
    public enum Kind {
        /** The file was damaged: it was renamed, and a new one begun. An event, never over. */
        SET_ASIDE,
        /** The disk is full, read-only, or not there. */
        NOT_WRITABLE,
        /** More history came than could be written; some was dropped. */
        HISTORY_THINNED
    }
}
