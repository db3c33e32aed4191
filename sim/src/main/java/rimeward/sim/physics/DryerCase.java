package rimeward.sim.physics;

/**
 * What every dryer has, whatever dries inside it.
 *
 * @param fanW power of its fan alone, 0…500 W
 * @param innerJPerK heat capacity of rotor or coil with casing, 100…1e5 J/K
 * @param blownWPerK from that inside to the air while the fan turns, 1…500 W/K
 * @param stillWPerK the same without the fan, 0.1…500 W/K
 * @param minimumAirC its own lock against cold air opens below this and closes 1 K above, −30…20 °C
 * @param tankKg water its tank holds before the float stops it, 0.5 kg and more; infinite for a hose to a drain
 */
public record DryerCase(
        double fanW,
        double innerJPerK,
        double blownWPerK,
        double stillWPerK,
        double minimumAirC,
        double tankKg,
        HumidistatParameters humidistat) {
    public DryerCase {
        Require.within("fanW of the dryer", fanW, 0, 500);
        Require.within("innerJPerK of the dryer", innerJPerK, 100, 1e5);
        Require.within("blownWPerK of the dryer", blownWPerK, 1, 500);
        Require.within("stillWPerK of the dryer", stillWPerK, 0.1, 500);
        Require.within("minimumAirC of the dryer", minimumAirC, -30, 20);
        Require.within("tankKg of the dryer", tankKg, 0.5, Double.POSITIVE_INFINITY);
    }
}
