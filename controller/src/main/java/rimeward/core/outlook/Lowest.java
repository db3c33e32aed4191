package rimeward.core.outlook;

import java.util.List;
import rimeward.core.outlook.Course.Step;

/**
 * The lowest of several expected temperatures. Not the lowest expectation: any of them may turn out lower, though not each by itself,
 * because neighbours err together. Errors are taken to be normal, their correlation to fall with the time between (a Markov chain).
 * Source: Clark, "The greatest of a finite set of random variables", Operations Research 9 (1961), 145–162, for two at a time.
 *
 * @param airC expected lowest, °C
 * @param spreadK standard deviation of that, K
 * @param epochS when the lowest expectation is, s since 1970 UTC
 */
public record Lowest(double airC, double spreadK, long epochS) {
    private static final double NEARLY_SURE_K = 1e-6;

    /** Errors of which the correlation falls by e over this time, s. */
    static Lowest of(List<Step> steps, double errorMemoryS) {
        if (steps.isEmpty()) {
            throw new IllegalArgumentException("the course has no step in the time asked for");
        }
        Step first = steps.get(0);
        Lowest lowest = new Lowest(first.airC(), first.spreadK(), first.epochS());
        double coldestC = first.airC();
        double alike = 1; // correlation of the lowest so far with the step that was looked at last
        for (int i = 1; i < steps.size(); i++) {
            Step step = steps.get(i);
            double keep = StrictMath.exp((steps.get(i - 1).epochS() - step.epochS()) / errorMemoryS);
            double together = alike * keep;
            long when = step.airC() < coldestC ? step.epochS() : lowest.epochS;
            coldestC = StrictMath.min(coldestC, step.airC());
            Lowest both = lowest.or(step, together, when);
            double share = lowest.shareAbove(step, together);
            alike = both.spreadK < NEARLY_SURE_K
                    ? 1
                    : StrictMath.min(
                            1, (lowest.spreadK * together * (1 - share) + step.spreadK() * share) / both.spreadK);
            lowest = both;
        }
        return lowest;
    }

    Lowest plus(double offK) {
        return new Lowest(airC + offK, spreadK, epochS);
    }

    /** Clark's (2) and (3), for the lower of two. */
    private Lowest or(Step step, double together, long when) {
        double apartK = apartK(step, together);
        double z = (step.airC() - airC) / StrictMath.max(NEARLY_SURE_K, apartK);
        double here = Normal.below(z);
        double meanC = airC * here + step.airC() * (1 - here) - apartK * Normal.density(z);
        double squares = squares(airC - meanC, spreadK) * here
                + squares(step.airC() - meanC, step.spreadK()) * (1 - here)
                - (airC + step.airC() - 2 * meanC) * apartK * Normal.density(z);
        return new Lowest(meanC, StrictMath.sqrt(StrictMath.max(0, squares)), when);
    }

    /** How likely it is that the step is the lower one. */
    private double shareAbove(Step step, double together) {
        return Normal.below((airC - step.airC()) / StrictMath.max(NEARLY_SURE_K, apartK(step, together)));
    }

    /** Standard deviation of the difference, K. */
    private double apartK(Step step, double together) {
        double squares = spreadK * spreadK + step.spreadK() * step.spreadK() - 2 * spreadK * step.spreadK() * together;
        return StrictMath.sqrt(StrictMath.max(0, squares));
    }

    private static double squares(double mean, double spread) {
        return mean * mean + spread * spread;
    }
}
