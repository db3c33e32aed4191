package rimeward.core.judgement;

/** How much of what should be known is known. */
public enum Trust {
    FULL,
    /** Some reading is not believed; the rest carries on. */
    REDUCED,
    /** No inside temperature is believed. */
    BLIND
}
