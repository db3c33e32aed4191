package rimeward.sim.run;

import java.util.List;
import rimeward.sim.check.Breach;

/**
 * One run in numbers. All are of the simulated truth, not of what the controller believed.
 *
 * @param lowestBenchC lowest temperature any bench met, °C
 * @param lowestBench which bench
 * @param lowestEpochS when, s since 1970 UTC
 * @param belowFloorS time with any bench below the floor, s
 * @param gapS time near the floor with heat in hand and nobody giving it, s
 * @param filmAtDewS time with the film at or below the dew point, s
 * @param benchAtDewS time with any bench at or below the dew point, s
 * @param aboveRhTargetS time with the wettest bench above the humidity target, s
 * @param heaterKWh electricity of the heater, its fan included, kWh
 * @param dryerKWh electricity of the dryer, kWh
 * @param fanKWh electricity of the vent fan, kWh
 * @param cost of all three by the site's tariff
 * @param currency the tariff's
 * @param collectedL water the dryer collected, L
 * @param machines one for each of the site's machines
 * @param alerts alerts raised
 * @param heatClosure how far the heat ledger is from closing, as a share of its turnover
 * @param waterClosure the same of the water ledger
 * @param breaches properties that did not hold, in their order; empty is good
 * @param shortfall by how much the heat fell short
 */
public record Summary(
        double lowestBenchC,
        String lowestBench,
        long lowestEpochS,
        long belowFloorS,
        long gapS,
        long filmAtDewS,
        long benchAtDewS,
        long aboveRhTargetS,
        double heaterKWh,
        double dryerKWh,
        double fanKWh,
        double cost,
        String currency,
        double collectedL,
        List<MachineUse> machines,
        int alerts,
        double heatClosure,
        double waterClosure,
        List<Breach> breaches,
        Shortfall shortfall) {
    public Summary {
        machines = List.copyOf(machines);
        breaches = List.copyOf(breaches);
    }

    public double totalKWh() {
        return heaterKWh + dryerKWh + fanKWh;
    }
}
