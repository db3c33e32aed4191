package rimeward.core.outlook;

/**
 * How the air cools from two hours after sunset until sunrise: by the square root of the time. Source: Snyder &amp; de Melo-Abreu, FAO
 * 2005, ch. 5.
 */
public record Cooling(long fromEpochS, double fromC, long sunriseEpochS, double lowestC) {
    /** Temperature at a time from the evening to sunrise, °C; beyond them that of the nearer end. */
    public double airC(long epochS) {
        return fromC + (lowestC - fromC) * StrictMath.sqrt(share(epochS));
    }

    /** Share of the time from the evening to sunrise that is over, 0 to 1. */
    double share(long epochS) {
        double share = (double) (epochS - fromEpochS) / (sunriseEpochS - fromEpochS);
        return StrictMath.max(0, StrictMath.min(1, share));
    }
}
