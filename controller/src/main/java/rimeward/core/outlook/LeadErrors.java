package rimeward.core.outlook;

/**
 * How wrong forecasts were here, so long ahead, by day or by night.
 *
 * @param nights learned from so many
 * @param biasK what is to be added to the forecast, K
 * @param spreadK standard deviation of one hour's error about that, K
 */
record LeadErrors(int nights, double biasK, double spreadK) {
    /** The usual spread counts like so many nights, and the bias of none like so many: hollows are common. Own choices. */
    private static final double PRIOR_SPREAD_NIGHTS = 4;

    private static final double PRIOR_BIAS_NIGHTS = 2;

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
        for (double errorK : errorsK) {
            sumK += errorK - biasK;
        }
        double meanK = bounded(sumK / errorsK.length, MOST_BIAS_SPREADS * spreadK);
        double learnedK = meanK / (1 + known(PRIOR_BIAS_NIGHTS));
        double squares = 0;
        for (double errorK :
                errorsK) { // about the bias before and after (Welford), so that learning it is not taken for spread
            squares += bounded(errorK - biasK, MOST_HOUR_SPREADS * spreadK)
                    * bounded(errorK - biasK - learnedK, MOST_HOUR_SPREADS * spreadK);
        }
        double was = spreadK * spreadK;
        double variance = was + (squares / errorsK.length - was) / (1 + known(PRIOR_SPREAD_NIGHTS));
        double least = LEAST_SPREAD_K * LEAST_SPREAD_K;
        return new LeadErrors(nights + 1, biasK + learnedK, StrictMath.sqrt(StrictMath.max(least, variance)));
    }

    /** The spread, with how little the bias is known yet, K. */
    double predictiveSpreadK() {
        return spreadK * StrictMath.sqrt(1 + 1 / known(PRIOR_BIAS_NIGHTS));
    }

    private double known(double priorNights) {
        return StrictMath.min(MEMORY_NIGHTS, priorNights + nights);
    }

    private static double bounded(double value, double most) {
        return StrictMath.max(-most, StrictMath.min(most, value));
    }
}
