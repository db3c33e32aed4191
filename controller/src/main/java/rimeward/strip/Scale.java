package rimeward.strip;

/**
 * How values lie on a ruled panel: the highest at its top, the lowest at its bottom.
 *
 * @param low value at the lower edge
 * @param high value at the upper edge
 * @param rule distance of fine rules, in the value's unit
 * @param label distance of bold, labelled rules; a multiple of {@code rule}
 * @param heightPx height of the panel, CSS px
 */
public record Scale(double low, double high, double rule, double label, int heightPx) {
    /** Drawing units in a pixel: vertical resolution of all lines. */
    public static final int UNITS_PER_PX = 4;

    private static final double[] STEPS = {0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000};
    private static final double LEAST_RULE_PX = 9;
    private static final double LEAST_LABEL_PX = 30;

    /** A scale on which both values lie, widened to whole rules. */
    public static Scale around(double least, double most, int heightPx) {
        double range = Math.max(most - least, 1e-6);
        double rule = stepOf(range * LEAST_RULE_PX / heightPx, STEPS[0]);
        double low = Math.floor(least / rule) * rule;
        double high = Math.max(Math.ceil(most / rule), Math.floor(least / rule) + 1) * rule;
        double label = stepOf((high - low) * LEAST_LABEL_PX / heightPx, rule);
        return new Scale(low, high, rule, label, heightPx);
    }

    private static double stepOf(double least, double divisor) {
        for (double step : STEPS) {
            double times = step / divisor;
            if (step >= least && Math.abs(times - Math.rint(times)) < 1e-9) {
                return step;
            }
        }
        return STEPS[STEPS.length - 1];
    }

    public int heightUnits() {
        return heightPx * UNITS_PER_PX;
    }

    /** Distance from the upper edge, drawing units; values beyond an edge lie beyond the panel and are cut off by it. */
    public int units(double value) {
        double units = (high - value) / (high - low) * heightUnits();
        return (int) Math.rint(Math.max(-heightUnits(), Math.min(2.0 * heightUnits(), units)));
    }

    /** Distance from the upper edge, px, kept inside the panel. */
    public double px(double value) {
        return Math.max(0, Math.min(heightPx, (double) units(value) / UNITS_PER_PX));
    }
}
