package rimeward.strip;

/**
 * A value ruled across a panel. Where a pen is on its wrong side, the space between is hatched.
 *
 * @param text its name and value, short enough for the gutter
 * @param kind ink: the style sheet knows it
 * @param wrongSide where the pen should not be
 */
public record Limit(String text, String kind, double value, Side wrongSide, Series held) {
    /** Which side of it. */
    public enum Side {
        BELOW,
        ABOVE
    }

    boolean isBroken(double atValue) {
        return wrongSide == Side.BELOW ? atValue < value : atValue > value;
    }
}
