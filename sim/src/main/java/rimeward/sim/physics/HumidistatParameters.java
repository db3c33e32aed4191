package rimeward.sim.physics;

/**
 * A dryer's own humidistat.
 *
 * @param satisfiedPercent relative humidity at which it stops the dryer, 0…95 %
 * @param differentialPercent how far the humidity must rise before it starts it again, 0.5…40 %
 * @param restS once satisfied it does not look again sooner than this, 0…7200 s
 * @param lagS time constant by which it follows the air, 1…3600 s
 */
public record HumidistatParameters(double satisfiedPercent, double differentialPercent, double restS, double lagS) {
    public HumidistatParameters {
        Require.within("satisfiedPercent of the humidistat", satisfiedPercent, 0, 95);
        Require.within("differentialPercent of the humidistat", differentialPercent, 0.5, 40);
        Require.within("restS of the humidistat", restS, 0, 7200);
        Require.within("lagS of the humidistat", lagS, 1, 3600);
    }
}
