package rimeward.core.guard;

/** Who carries the warm duty. */
public enum Holder {
    /** It is not needed. */
    NOT_NEEDED,
    HEATER,
    DRYER,
    /** It is needed and may not be held: the air is above the hot limit, or a sensor says so. */
    BARRED,
    /** It is needed and nobody carries it: a gap. The guard lets that stand only when the circuit has no room, or what is left may not run while others stand down; a law that runs without it may. */
    NOBODY
}
