package rimeward.core.outlook;

/**
 * One night outside, from noon to noon, as the own sensor saw it.
 *
 * @param evening the air two hours after sunset
 * @param lowestC °C
 * @param highestC °C
 */
public record KnownNight(OutsideAir evening, double lowestC, double highestC) {
    /** @throws IllegalArgumentException if the highest is not a number at or above the lowest */
    public KnownNight {
        if (!(lowestC <= highestC)) {
            throw new IllegalArgumentException(
                    "a night's lowest, " + lowestC + " °C, is above its highest, " + highestC + " °C");
        }
    }
}
