package rimeward.sim.physics;

/**
 * How a run begins.
 *
 * @param airC of air and machines, −40…50 °C
 * @param massC of pots, slab and top soil, −40…50 °C
 * @param rhPercent relative humidity of the air over water, 1…100 %
 * @param mediumWaterKg water in the growing medium, kg
 * @param tankKg water in the dryer's tank, kg
 */
public record StartState(double airC, double massC, double rhPercent, double mediumWaterKg, double tankKg) {
    public StartState {
        Require.within("airC at start", airC, -40, 50);
        Require.within("massC at start", massC, -40, 50);
        Require.within("rhPercent at start", rhPercent, 1, 100);
        Require.within("mediumWaterKg at start", mediumWaterKg, 0, 1e6);
        Require.within("tankKg at start", tankKg, 0, 1e4);
    }
}
