package rimeward.core.outlook;

/** The standard normal distribution. */
final class Normal {
    private static final double[] B = {0.319381530, -0.356563782, 1.781477937, -1.821255978, 1.330274429};

    private Normal() {}

    /** Probability below z, within 1e-7: Abramowitz &amp; Stegun (1964), 26.2.17. */
    static double below(double z) {
        double t = 1 / (1 + 0.2316419 * StrictMath.abs(z));
        double beyond = density(z) * t * (B[0] + t * (B[1] + t * (B[2] + t * (B[3] + t * B[4]))));
        return z < 0 ? beyond : 1 - beyond;
    }

    static double density(double z) {
        return StrictMath.exp(-z * z / 2) / StrictMath.sqrt(2 * StrictMath.PI);
    }
}
