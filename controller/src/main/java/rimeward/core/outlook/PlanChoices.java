package rimeward.core.outlook;

import rimeward.site.RelaySet;
import rimeward.site.Sensor;
import rimeward.site.Site;

/**
 * What a plan is made with beside the tunnel and its weather.
 *
 * @param coldCornerK how much colder the coldest bench reads than the middle of the tunnel, K
 * @param doubtK what the law takes off the coldest reading: its sensor's stated uncertainty, K
 * @param out machines that cannot be counted on: they stand down, or have failed
 * @param statedChance from this chance on that the floor cannot be held, the grower is told to act, 0 to 1
 */
public record PlanChoices(double coldCornerK, double doubtK, RelaySet out, double statedChance) {
    /** Until the benches' habits are known, K. Own choice. */
    public static final double USUAL_CORNER_K = 1;

    /** One night in twenty. Own choice. */
    public static final double USUAL_CHANCE = 0.05;

    /** @throws IllegalArgumentException if a number is none that a tunnel can have */
    public PlanChoices {
        if (!(coldCornerK >= 0 && coldCornerK <= 10)) {
            throw new IllegalArgumentException("the cold corner is " + coldCornerK + " K colder; it must be 0 to 10 K");
        }
        if (!(doubtK >= 0 && doubtK <= 5)) {
            throw new IllegalArgumentException("the sensors' uncertainty is " + doubtK + " K; it must be 0 to 5 K");
        }
        if (!(statedChance > 0 && statedChance < 1)) {
            throw new IllegalArgumentException(
                    "the chance to warn at is " + 100 * statedChance + " %; it must lie between 0 and 100 %");
        }
    }

    /** Every machine in use, the corner as usual, the largest uncertainty of the inside sensors. */
    public static PlanChoices usual(Site site) {
        double doubtK = 0;
        for (Sensor sensor : site.sensors()) {
            doubtK = sensor.place().isInside() ? StrictMath.max(doubtK, sensor.uncertaintyK()) : doubtK;
        }
        return new PlanChoices(USUAL_CORNER_K, doubtK, RelaySet.none(), USUAL_CHANCE);
    }

    public PlanChoices withCorner(double otherK) {
        return new PlanChoices(otherK, doubtK, out, statedChance);
    }

    public PlanChoices without(RelaySet machines) {
        return new PlanChoices(coldCornerK, doubtK, machines, statedChance);
    }

    public PlanChoices warningAt(double otherChance) {
        return new PlanChoices(coldCornerK, doubtK, out, otherChance);
    }
}
