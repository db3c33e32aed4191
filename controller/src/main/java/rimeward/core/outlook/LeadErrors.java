package rimeward.core.outlook;

/**
 * How wrong forecasts were here, so long ahead, by day or by night.
 *
 * @param nights learned from so many
 * @param biasK what is to be added to the forecast, K
 * @param spreadK standard deviation of one hour's error about that, K
 */
record LeadErrors(int nights, double biasK, double spreadK) {
    /** The prior, no bias and the usual spread, counts like so many nights. Own choice. */
    private static final double PRIOR_NIGHTS = 4;

    /** So many nights are remembered; older ones fade. Own choice: a month and a half is a season. */
    private static final double MEMORY_NIGHTS = 45;

    /** One night's mean error counts no farther than this from what was known, in spreads; one hour's the same. Own choices, after Huber. */
    private static final double MOST_BIAS_SPREADS = 2;

    private static final double MOST_HOUR_SPREADS = 3;
    private static final double LEAST_SPREAD_K = 0.3;

    /** @throws IllegalArgumentException if it cannot have been learned */
    LeadErrors {
        if (nights < 0 || !(spreadK > 0)) {
            throw new IllegalArgumentException(nights + " nights, " + spreadK + " K: neither may be negative");
        }
    }

    /** After one more night. A sensor that lied all night, by however much, moves the bias by two spreads' share at most. */
    LeadErrors after(double[] errorsK) {
        double sumK = 0;
        double squares = 0;
        for (double errorK : errorsK) {
            double offK = errorK - biasK;
            sumK += offK;
            double countedK = bounded(offK, MOST_HOUR_SPREADS * spreadK);
            squares += countedK * countedK;
        }
        double meanK = bounded(sumK / errorsK.length, MOST_BIAS_SPREADS * spreadK);
        double pace = 1 / (PRIOR_NIGHTS + 1 + StrictMath.min(nights, MEMORY_NIGHTS - PRIOR_NIGHTS));
        double variance = spreadK * spreadK + pace * (squares / errorsK.length - spreadK * spreadK);
        return new LeadErrors(
                nights + 1, biasK + pace * meanK, StrictMath.max(LEAST_SPREAD_K, StrictMath.sqrt(variance)));
    }

    /** The spread, with how little the bias is known yet, K. */
    double predictiveSpreadK() {
        double known = PRIOR_NIGHTS + StrictMath.min(nights, MEMORY_NIGHTS - PRIOR_NIGHTS);
        return spreadK * StrictMath.sqrt(1 + 1 / known);
    }

    private static double bounded(double value, double most) {
        return StrictMath.max(-most, StrictMath.min(most, value));
    }
}
