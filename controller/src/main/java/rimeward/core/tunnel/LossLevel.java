package rimeward.core.tunnel;

import java.util.List;

/**
 * How much some nights lose, beside the tunnel as it was learned once, and how much one of them differs from the next: wind, cloud and
 * frost on the cover, which nobody measures.
 *
 * @param mean of the logarithms of their factors
 * @param nights how many they count for: one that tells little counts for less, and old ones are forgotten
 * @param spread standard deviation from night to night of the logarithm, beyond what a night's own readings leave open
 */
record LossLevel(double mean, double nights, double spread) {
    /** Older nights fade: as days grow longer, the sun leaves the model more that it does not know. Own choice, from {@code LossBench}. */
    private static final double MOST_NIGHTS = 14;

    /** Taken for so many nights' worth until own nights are known. Own choices, from {@code LossBench}. */
    private static final double USUAL_SPREAD = 0.08;

    private static final double USUAL_COUNTS = 10;
    private static final double LEAST_SPREAD = 0.03;

    /** One night's difference counts for no more than so many standard deviations: a door that stood open is no weather. */
    private static final double FARTHEST = 3;

    /** Of these nights, at least one, when nothing else is known. */
    static LossLevel of(List<LossNight> nights) {
        double middle = of(nights, USUAL_SPREAD).mean;
        double sum = USUAL_COUNTS * USUAL_SPREAD * USUAL_SPREAD;
        for (LossNight night : nights) {
            sum += square(night, middle, USUAL_SPREAD);
        }
        return of(nights, root(sum / (USUAL_COUNTS + nights.size())));
    }

    /** Of these nights, at least one, which differ as those before them did. */
    static LossLevel of(List<LossNight> nights, double spread) {
        LossLevel level = new LossLevel(0, 0, spread);
        for (LossNight night : nights) {
            level = level.counting(night, spread);
        }
        return level;
    }

    /** With one more night that belongs to it. */
    LossLevel after(LossNight night) {
        double square = square(night, mean, spread);
        return counting(
                night,
                root(spread * spread + (square - spread * spread) / (USUAL_COUNTS + StrictMath.rint(nights) + 1)));
    }

    private LossLevel counting(LossNight night, double newSpread) {
        double variance = newSpread * newSpread;
        double counts = variance / (variance + night.standardError() * night.standardError());
        double all = StrictMath.min(MOST_NIGHTS, nights + counts);
        return new LossLevel(mean + counts / all * (night.logFactor() - mean), all, newSpread);
    }

    /** What a night's difference says of the square of the spread. */
    private static double square(LossNight night, double middle, double spread) {
        double ownVariance = night.standardError() * night.standardError();
        double apart = night.logFactor() - middle;
        return StrictMath.min(apart * apart, FARTHEST * FARTHEST * (spread * spread + ownVariance)) - ownVariance;
    }

    private static double root(double square) {
        return StrictMath.max(LEAST_SPREAD, StrictMath.sqrt(StrictMath.max(0, square)));
    }

    /** Standard deviation of one night around it, the level's own being known. */
    double deviation(LossNight night) {
        return StrictMath.sqrt(spread * spread + night.standardError() * night.standardError());
    }
}
