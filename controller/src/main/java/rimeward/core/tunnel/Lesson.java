package rimeward.core.tunnel;

/** What the nights so far teach of a tunnel. */
public sealed interface Lesson {
    /** Not enough nights yet. */
    record TooFew(int nights, int needed) implements Lesson {}

    /** Enough nights, but they do not tell. */
    record Unclear(int nights, String why) implements Lesson {}

    /**
     * A tunnel.
     *
     * @param whiteness probability that what was not foreseen is without a pattern (Ljung &amp; Box), 0 to 1; a small one says that the
     *     tunnel is not as simple as the model
     */
    record Learned(TunnelEstimate estimate, GreyBox box, double whiteness) implements Lesson {}
}
