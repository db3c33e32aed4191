package rimeward.sim.physics;

/** A contact that turns high at {@code upper} and low again at {@code lower}; for one thread. */
final class Hysteresis {
    private final double lower;
    private final double upper;
    private boolean high;

    Hysteresis(double lower, double upper, double now) {
        this.lower = lower;
        this.upper = upper;
        high = now >= upper;
    }

    boolean isHigh() {
        return high;
    }

    void flip() {
        high = !high;
    }

    double turnsAt() {
        return high ? lower : upper;
    }

    /** Share of the way from one value to the other at which it turns; more than 1 if it does not. */
    double crossing(double from, double to) {
        if (high) {
            return to > lower ? 2 : share(from - lower, from - to);
        }
        return to < upper ? 2 : share(upper - from, to - from);
    }

    private static double share(double part, double whole) {
        return part <= 0 ? 0 : part / whole;
    }
}
