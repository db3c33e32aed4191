package rimeward.sim.world;

/**
 * When the grower comes by and empties the dryer's tank.
 *
 * @param firstS elapsed s, 0 or more
 * @param everyS more than 0 s; infinite for one visit only
 */
public record GrowerRounds(double firstS, double everyS) {
    public GrowerRounds {
        if (!(firstS >= 0) || !(everyS > 0)) {
            throw new IllegalArgumentException("the grower's rounds begin at " + firstS + " s and come every " + everyS
                    + " s; must be 0 s or later and more than 0 s");
        }
    }

    /** Nobody comes. */
    public static GrowerRounds none() {
        return new GrowerRounds(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
    }
}
