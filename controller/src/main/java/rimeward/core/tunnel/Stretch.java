package rimeward.core.tunnel;

import java.util.List;

/**
 * Hours and days of the tunnel without a hole in them, during which the same inside sensors counted: what it is learned from.
 *
 * @param startEpochS when it begins, s since 1970 UTC
 * @param quarters one for each quarter of an hour, at least one
 */
public record Stretch(long startEpochS, List<Quarter> quarters) {
    /** How long a quarter lasts, s. */
    public static final int QUARTER_S = 900;

    /** How many minutes it has. */
    public static final int MINUTES = 15;

    public Stretch {
        quarters = List.copyOf(quarters);
        if (quarters.isEmpty()) {
            throw new IllegalArgumentException("a stretch needs at least one quarter of an hour");
        }
    }

    /**
     * One quarter of an hour.
     *
     * @param airC mean of the benches at its end, °C
     * @param outsideC mean outside temperature, °C
     * @param heaterW mean power of the heater in each minute, as the sensors come to feel it, W; {@link #MINUTES} of them
     * @param dryerW the same of the dryer, W
     * @param dark whether there was no sun for sure
     * @param sunHeight sine of the sun's height, 0 where it is down; as the clock tells it, so only roughly
     * @param shut whether neither door nor vent fan let outside air in
     */
    public record Quarter(
            double airC,
            double outsideC,
            List<Double> heaterW,
            List<Double> dryerW,
            boolean dark,
            double sunHeight,
            boolean shut) {
        public Quarter {
            heaterW = List.copyOf(heaterW);
            dryerW = List.copyOf(dryerW);
            if (heaterW.size() != MINUTES || dryerW.size() != MINUTES) {
                throw new IllegalArgumentException("a quarter of an hour has " + MINUTES + " minutes, not "
                        + heaterW.size() + " and " + dryerW.size());
            }
        }
    }
}
