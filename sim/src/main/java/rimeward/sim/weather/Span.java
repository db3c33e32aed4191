package rimeward.sim.weather;

/** A stretch of time, both ends included, epoch seconds. */
public record Span(long fromEpochS, long untilEpochS) {
    /** Whatever a file holds. */
    public static final Span ALL = new Span(-100_000_000_000L, 100_000_000_000L);

    public Span {
        if (untilEpochS <= fromEpochS) {
            throw new IllegalArgumentException(
                    "a span must end after it begins, not at " + untilEpochS + " after " + fromEpochS);
        }
    }

    Span widened(long byS) {
        return new Span(fromEpochS - byS, untilEpochS + byS);
    }

    boolean holds(long epochS) {
        return epochS >= fromEpochS && epochS <= untilEpochS;
    }
}
