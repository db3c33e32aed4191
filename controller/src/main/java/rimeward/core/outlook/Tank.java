package rimeward.core.outlook;

/** Whether the dryer's tank lasts the night. */
public sealed interface Tank {
    /** No dryer in use, or a hose leads its water to a drain. */
    record None() implements Tank {}

    /**
     * It lasts.
     *
     * @param leftL room left now, L
     */
    record Lasts(double leftL) implements Tank {}

    /**
     * It will be full, and the dryer stop.
     *
     * @param leftL room left now, L
     * @param epochS when, s since 1970 UTC
     */
    record FullAt(double leftL, long epochS) implements Tank {}
}
