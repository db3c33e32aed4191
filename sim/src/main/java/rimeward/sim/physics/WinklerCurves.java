package rimeward.sim.physics;

/**
 * How a compressor dryer's water removal and efficiency depend on the air, relative to the rating point of 26.7 °C and 60 %.
 *
 * <p>Source: Winkler, Christensen &amp; Tomerlin, Laboratory Test Report for Six ENERGY STAR Dehumidifiers (NREL, 2011). The fits
 * are used between 2 and 33 °C and 30 and 100 %; outside, the nearest edge stands in (limits from memory), and neither falls below 0.
 */
public final class WinklerCurves {
    private static final double LEAST_C = 2;
    private static final double MOST_C = 33;
    private static final double LEAST_PERCENT = 30;
    private static final double MOST_PERCENT = 100;

    private WinklerCurves() {}

    /** Water removed, as a share of that at the rating point. */
    public static double waterShare(double airC, double rhPercent) {
        double t = clip(airC, LEAST_C, MOST_C);
        double rh = clip(rhPercent, LEAST_PERCENT, MOST_PERCENT);
        double share = -1.162525707
                + 0.02271469 * t
                - 0.000113208 * t * t
                + 0.021110538 * rh
                - 0.0000693034 * rh * rh
                + 0.000378843 * t * rh;
        return Math.max(0, share);
    }

    /** Water removed per energy, as a share of that at the rating point. */
    public static double efficiencyShare(double airC, double rhPercent) {
        double t = clip(airC, LEAST_C, MOST_C);
        double rh = clip(rhPercent, LEAST_PERCENT, MOST_PERCENT);
        double share = -1.902154518
                + 0.063466565 * t
                - 0.000622839 * t * t
                + 0.039540407 * rh
                - 0.000125637 * rh * rh
                - 0.000176722 * t * rh;
        return Math.max(0, share);
    }

    private static double clip(double x, double least, double most) {
        return Math.max(least, Math.min(most, x));
    }
}
