package rimeward.core.tunnel;

/**
 * A number and how well it is known.
 *
 * @param value in the unit that its name ends in
 * @param standardError standard error of it, in the same unit
 */
public record Figure(double value, double standardError) {
    /** Two-sided 95 % of a normal distribution. */
    private static final double Z95 = 1.959964;

    public double least() {
        return value - Z95 * standardError;
    }

    public double most() {
        return value + Z95 * standardError;
    }

    /** An assumption: as well known as is usual for one. */
    static Figure assumed(double value, double relativeError) {
        return new Figure(value, StrictMath.abs(value) * relativeError);
    }
}
