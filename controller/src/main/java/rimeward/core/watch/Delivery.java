package rimeward.core.watch;

/** What a machine is seen to do. */
public enum Delivery {
    /** Its relay is open, and nothing speaks against that. */
    OFF,
    /** Its relay has just closed; too early to tell. */
    STARTING,
    /** It is seen to deliver: a meter shows its power. */
    GIVING,
    /** Its relay is closed and nobody can see what it does. */
    UNSEEN,
    /** Its relay is closed and it does not deliver. */
    NOT_GIVING,
    /** Its relay is open and it delivers all the same. */
    STUCK_ON
}
