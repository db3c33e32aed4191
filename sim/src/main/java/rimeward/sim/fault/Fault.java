package rimeward.sim.fault;

/**
 * One thing that goes wrong.
 *
 * @param atS when it begins, elapsed s
 * @param target id of the sensor or machine, empty for kinds that need none
 * @param lastsS how long, s; infinite for ever; 0 for what happens at a moment
 * @param magnitude in the kind's unit, 0 for kinds that have none
 */
public record Fault(double atS, FaultKind kind, String target, double lastsS, double magnitude) {
    public Fault {
        require(atS >= 0 && atS < Double.POSITIVE_INFINITY, kind, "begins at " + atS + " s, must be 0 s or later");
        require(
                kind.needsTarget() != target.isEmpty(),
                kind,
                kind.needsTarget() ? "needs a target" : "takes no target, got \"" + target + "\"");
        require(
                kind.isMomentary() ? lastsS == 0 : lastsS > 0,
                kind,
                "lasts " + lastsS + " s, must be " + (kind.isMomentary() ? "0 s" : "longer than 0 s"));
        require(
                magnitude >= kind.leastMagnitude() && magnitude <= kind.mostMagnitude(),
                kind,
                "has magnitude " + magnitude + " " + kind.unit() + ", must be " + kind.leastMagnitude() + "…"
                        + kind.mostMagnitude());
    }

    /** Of the usual magnitude, about the whole site. */
    public static Fault of(double atS, FaultKind kind, double lastsS) {
        return new Fault(atS, kind, "", lastsS, kind.usualMagnitude());
    }

    /** Of the usual magnitude, about one machine or sensor. */
    public static Fault of(double atS, FaultKind kind, String target, double lastsS) {
        return new Fault(atS, kind, target, lastsS, kind.usualMagnitude());
    }

    /** When it is over, elapsed s. */
    public double endsS() {
        return atS + lastsS;
    }

    private static void require(boolean holds, FaultKind kind, String message) {
        if (!holds) {
            throw new IllegalArgumentException("fault " + kind.label() + " " + message);
        }
    }
}
