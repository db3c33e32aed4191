package rimeward.sim.physics;

/**
 * A bench, and how the air about its plants differs from the tunnel's mean air.
 *
 * @param name for people
 * @param offsetK always, K (−5…5)
 * @param liftShare grows with the lift over outside: −0.1 makes the bench 1 K colder when the mean air is 10 K above outside (−0.5…0.5)
 */
public record BenchParameters(String name, double offsetK, double liftShare) {
    public BenchParameters {
        Require.that(!name.isBlank(), "a bench needs a name");
        Require.within("offsetK of bench " + name, offsetK, -5, 5);
        Require.within("liftShare of bench " + name, liftShare, -0.5, 0.5);
    }

    double benchC(double airC, double outsideC) {
        return airC + offsetK + liftShare * (airC - outsideC);
    }
}
