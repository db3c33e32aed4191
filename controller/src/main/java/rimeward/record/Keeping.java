package rimeward.record;

/** Why a frame is kept, or that it is not. */
public enum Keeping {
    DROPPED,
    /** Nothing changed; the minute's row. */
    MINUTE,
    /** Relays, holder, trust, a verdict, a contact or an alert changed. */
    CHANGE
}
