package rimeward.core.outlook;

/**
 * An error that is forgotten at a steady rate.
 *
 * @param memoryS over which it falls by e, s
 */
record Fading(double memoryS) {
    /** What stays of it, 0 to 1. */
    double keep(long epochS, long seenEpochS) {
        return StrictMath.exp((seenEpochS - epochS) / memoryS);
    }

    /** What of a spread is left where the error was seen before, K. */
    double leftK(double spreadK, long epochS, long seenEpochS) {
        double keep = keep(epochS, seenEpochS);
        return spreadK * StrictMath.sqrt(StrictMath.max(0, 1 - keep * keep));
    }
}
