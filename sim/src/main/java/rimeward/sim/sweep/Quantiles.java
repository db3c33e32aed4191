package rimeward.sim.sweep;

import java.util.Arrays;

/**
 * How numbers are spread: least, 5 %, 25 %, middle, 75 %, 95 %, most, and mean. Between two numbers a quantile is in proportion (Hyndman
 * &amp; Fan, The American Statistician 50 (1996) 361–365, definition 7).
 */
public record Quantiles(
        double least, double q05, double q25, double median, double q75, double q95, double most, double mean) {

    /** @param values at least one */
    public static Quantiles of(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        double sum = 0;
        for (double value : sorted) {
            sum += value;
        }
        return new Quantiles(
                sorted[0],
                at(sorted, 0.05),
                at(sorted, 0.25),
                at(sorted, 0.5),
                at(sorted, 0.75),
                at(sorted, 0.95),
                sorted[sorted.length - 1],
                sum / sorted.length);
    }

    private static double at(double[] sorted, double share) {
        double place = share * (sorted.length - 1);
        int below = (int) place;
        int above = Math.min(sorted.length - 1, below + 1);
        return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
    }
}
