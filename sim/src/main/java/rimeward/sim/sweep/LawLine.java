package rimeward.sim.sweep;

import rimeward.sim.run.MachineUse;
import rimeward.sim.run.RunResult;
import rimeward.sim.run.Summary;

/**
 * One winter under one law, in the numbers that sweeps compare.
 *
 * @param marginK lowest bench above the floor, K; negative below it
 * @param belowFloorMin time with a bench below the floor, min
 * @param gapS time near the floor with heat in hand and nobody giving it, s
 * @param benchWetH time with a bench at the dew point, h
 * @param dampH time above the humidity target, h
 * @param kWh electricity of all machines
 * @param starts of all relays together
 * @param alerts raised
 */
public record LawLine(
        String law,
        double marginK,
        double belowFloorMin,
        double gapS,
        double benchWetH,
        double dampH,
        double kWh,
        double starts,
        double alerts) {

    static LawLine of(RunResult result, double floorC) {
        Summary summary = result.summary();
        return new LawLine(
                result.law().name(),
                summary.lowestBenchC() - floorC,
                summary.belowFloorS() / 60.0,
                summary.gapS(),
                summary.benchAtDewS() / 3600.0,
                summary.aboveRhTargetS() / 3600.0,
                summary.totalKWh(),
                summary.machines().stream().mapToInt(MachineUse::starts).sum(),
                summary.alerts());
    }
}
