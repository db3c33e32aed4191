package rimeward.alert;

import rimeward.core.reading.Tick;

/**
 * Something the grower is told.
 *
 * @param kind what
 * @param subject which sensor or machine, or the site itself
 * @param change whether it was raised or cleared
 * @param at when
 * @param text one or two sentences for a tired person, with the one thing to do
 */
public record Alert(AlertKind kind, String subject, Change change, Tick at, String text) {
    /** What happened to it. */
    public enum Change {
        RAISED,
        CLEARED
    }
}
