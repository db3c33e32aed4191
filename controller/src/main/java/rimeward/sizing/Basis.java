package rimeward.sizing;

/** Where a number comes from. */
public enum Basis {
    /** The grower typed it. */
    GIVEN,
    /** The tunnel's settings file. */
    SETTINGS,
    /** A weather file. */
    WEATHER,
    /** A table, for what the grower named. */
    TABLE,
    /** Worked out from others. */
    DERIVED,
    /** Nobody said anything: our guess. */
    ASSUMED
}
