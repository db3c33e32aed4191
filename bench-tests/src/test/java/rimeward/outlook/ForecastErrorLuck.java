package rimeward.outlook;

import java.util.Random;

/**
 * How wrong a service's forecasts for the station are. Half of the variance is common to all forecasts for one hour, half is the single
 * forecast's own; both are remembered over half a day. On top of it a bias, and busts: one night in twenty-five turns out quite unlike what
 * every forecast made before six in the evening said, and half as unlike what later ones said.
 *
 * <p>The shape is our own; the size is chosen so that the forecast made at six in the morning has the coming night's lowest within 2 K on
 * 86.5 of a hundred nights, which is what the Met Office states for 119 places over 36 months (metoffice.gov.uk, "Accuracy performance",
 * first night). {@link FrostBench} prints what comes out.
 */
final class ForecastErrorLuck {
    private static final double MEMORY_H = 12;
    private static final double BIAS_K = 0.4;
    private static final double NEAR_K = 0.7;
    private static final double FAR_K = 0.75;
    private static final double GROWS_OVER_H = 18;
    private static final double BUSTS = 0.04;
    private static final double BUST_K = 3;
    private static final int HOUR_S = 3600;
    private static final int DAY_S = 86_400;
    private static final int BUST_FROM_H = 17;
    private static final int BUST_LASTS_H = 16;
    private static final int BUST_SEEN_H = 18;

    private final long startS;
    private final double scale;
    private final double biasK;
    private final double[] common;
    private final double[] bustK;

    /**
     * One winter's.
     *
     * @param scale 1 for forecasts as wrong as stated, 1.5 for half as wrong again
     */
    ForecastErrorLuck(long startS, int days, double scale, Random random) {
        this.scale = scale;
        this.startS = startS;
        biasK = BIAS_K * random.nextGaussian();
        common = walk(random, (days + 5) * 24);
        bustK = new double[days + 5];
        for (int i = 0; i < bustK.length; i++) {
            bustK[i] = random.nextDouble() < BUSTS ? BUST_K * random.nextGaussian() : 0;
        }
    }

    /** By the hour from the forecast's making, K. */
    double[] errorsK(long issuedS, int hours, long seed) {
        double[] own = walk(new Random(seed * 1_000_003 + issuedS), hours + 1);
        double[] errorK = new double[hours + 1];
        for (int hour = 0; hour <= hours; hour++) {
            long t = issuedS + hour * (long) HOUR_S;
            double spreadK = NEAR_K + FAR_K * (1 - StrictMath.exp(-hour / GROWS_OVER_H));
            int at = Math.max(0, Math.min(common.length - 1, (int) ((t - startS) / HOUR_S)));
            double walkK = spreadK * Math.sqrt(0.5) * (common[at] + own[hour]);
            errorK[hour] = scale * (biasK + walkK + bustK(t, issuedS));
        }
        return errorK;
    }

    private double bustK(long epochS, long issuedS) {
        long evening = Math.floorDiv(epochS - BUST_FROM_H * HOUR_S, (long) DAY_S);
        int night = (int) (evening - Math.floorDiv(startS, (long) DAY_S));
        double hour = (double) (epochS - evening * DAY_S) / HOUR_S - BUST_FROM_H;
        if (night < 0 || night >= bustK.length || hour > BUST_LASTS_H) {
            return 0;
        }
        double part = StrictMath.sin(StrictMath.PI * hour / BUST_LASTS_H);
        boolean late = issuedS >= evening * DAY_S + BUST_SEEN_H * HOUR_S;
        return bustK[night] * part * (late ? 0.5 : 1);
    }

    /** Mean 0, standard deviation 1, remembered over half a day and smooth over three hours, as forecasts are. */
    private static double[] walk(Random random, int hours) {
        double keep = StrictMath.exp(-1 / MEMORY_H);
        double[] rough = new double[hours + 2];
        double value = random.nextGaussian();
        for (int i = 0; i < rough.length; i++) {
            rough[i] = value;
            value = keep * value + Math.sqrt(1 - keep * keep) * random.nextGaussian();
        }
        double spread = Math.sqrt((3 + 4 * keep + 2 * keep * keep) / 9);
        double[] walk = new double[hours];
        for (int i = 0; i < hours; i++) {
            walk[i] = (rough[i] + rough[i + 1] + rough[i + 2]) / 3 / spread;
        }
        return walk;
    }
}
