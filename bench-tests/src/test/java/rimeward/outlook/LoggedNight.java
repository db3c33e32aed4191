package rimeward.outlook;

import java.util.List;

/**
 * One night of a bench, from noon.
 *
 * @param said each hour, until the night is over
 * @param sunset index of the first hour after it
 * @param isFrost whether the outside fell below what the machines hold
 * @param onsetH when, h from noon; the night's end where it did not
 */
record LoggedNight(List<Said> said, int sunset, boolean isFrost, double onsetH) {
    /**
     * What was said at one hour.
     *
     * @param chance that the outside gets too cold until the next noon
     * @param lowestOff how much colder than that the lowest was expected, in the spreads that were stated
     */
    record Said(double chance, double lowestOff) {}

    double chance(int hour) {
        return said.get(hour).chance;
    }
}
