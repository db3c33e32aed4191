package rimeward.sim.run;

/** By how much the heat fell short, where the floor was broken. */
public sealed interface Shortfall {
    /** The floor held. */
    record None() implements Shortfall {}

    /**
     * The floor was broken.
     *
     * @param deepestK how far below the floor the coldest bench came, K
     * @param epochS when that was, s since 1970 UTC
     * @param missingW heat that was missing then, W; an estimate: the tunnel's true heat loss times the depth, as if it had lasted
     */
    record Missing(double deepestK, long epochS, double missingW) implements Shortfall {}
}
