package rimeward.alert;

import java.util.Locale;
import rimeward.core.reading.Tick;

/**
 * Something the grower is told.
 *
 * @param id the incident's: the same over its repeats, a restart and its end, and never another's; a–z, 0–9 and -
 * @param kind what
 * @param subject which sensor or machine, or the site itself
 * @param change what happened to it
 * @param at when
 * @param text one or two sentences for a tired person, with the one thing to do
 */
public record Alert(String id, AlertKind kind, String subject, Change change, Tick at, String text) {
    /** What happened to it. */
    public enum Change {
        RAISED,
        /** It still stands. */
        REPEATED,
        /** Somebody knows of it. */
        ACKNOWLEDGED,
        CLEARED
    }

    /**
     * An incident's id.
     *
     * @param number does not come again for this kind and subject
     */
    public static String id(AlertKind kind, String subject, long number) {
        return kind.slug() + "-" + subject.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-") + "-" + number;
    }

    /** Whether it is news, and not the same again or its end. */
    public boolean isNew() {
        return change == Change.RAISED;
    }

    /** Whether nobody who hears this need hear the other one too: a reminder of the same incident. */
    public boolean replaces(Alert other) {
        return change == Change.REPEATED && other.change == Change.REPEATED && id.equals(other.id);
    }
}
