package rimeward.winter;

import java.util.List;
import rimeward.sim.physics.Panel;
import rimeward.sim.physics.TunnelParameters;
import rimeward.sim.scenario.Scenario;

/** The same winter in a tunnel that loses more or less: through gaps, or through its cover. */
final class ChangedLoss {
    /** A longer tick than a controller's, so that a winter is over in seconds; a heater's stages stay on for a minute at least. */
    private static final int TICK_S = 20;

    private static final int TRACE_S = 1200;
    private static final int ROUNDS = 6;
    private static final double NEAR = 0.003;

    private final Scenario scenario;
    private final double insideC;
    private final boolean byGaps;

    /** @param insideC mean of its nights, for which the loss is meant */
    ChangedLoss(Scenario scenario, double insideC, boolean byGaps) {
        this.scenario = scenario;
        this.insideC = insideC;
        this.byGaps = byGaps;
    }

    /** Losing by this share more, or less where it is negative: found by the secant method. */
    Scenario by(double share) {
        double wantWPerK = lossWPerK(1) * (1 + share);
        double beforeFactor = 1;
        double beforeWPerK = lossWPerK(1);
        double factor = 1 + share * (byGaps ? 4 : 1.2);
        for (int round = 0; round < ROUNDS; round++) {
            double isWPerK = lossWPerK(factor);
            if (Math.abs(isWPerK / wantWPerK - 1) < NEAR) {
                return with(factor);
            }
            if (isWPerK == beforeWPerK) {
                break; // it does not answer any more
            }
            double next = factor + (wantWPerK - isWPerK) * (factor - beforeFactor) / (isWPerK - beforeWPerK);
            beforeFactor = factor;
            beforeWPerK = isWPerK;
            factor = Math.max(0.05, next);
        }
        return with(factor);
    }

    private double lossWPerK(double factor) {
        return SteadyLoss.wPerK(with(factor), insideC);
    }

    private Scenario with(double factor) {
        TunnelParameters is = scenario.tunnel();
        List<Panel> cover = is.cover().stream()
                .map(panel -> new Panel(panel.kind(), panel.areaM2() * (byGaps ? 1 : factor)))
                .toList();
        return quick(
                scenario,
                new TunnelParameters(
                        cover,
                        is.floorM2(),
                        is.volumeM3(),
                        is.quickJPerK(),
                        is.massJPerK(),
                        is.massAirWPerK(),
                        is.groundWPerK(),
                        is.deepSoilC(),
                        is.leakCm2() * (byGaps ? factor : 1),
                        is.doorCm2(),
                        is.wetM2(),
                        is.mediumFullKg(),
                        is.mediumLowKg(),
                        is.runOffToMediumShare(),
                        is.sunToMassShare(),
                        is.altitudeM(),
                        is.benches()));
    }

    /** The scenario with this tunnel, and ticks that are soon over. */
    static Scenario quick(Scenario is, TunnelParameters tunnel) {
        return new Scenario(
                is.id(),
                is.title(),
                is.description(),
                is.site(),
                tunnel,
                is.machines(),
                is.machinesByHand(),
                is.sensors(),
                is.doorContact(),
                is.start(),
                is.weather(),
                is.forecast(),
                is.startEpochS(),
                is.lengthS(),
                TICK_S,
                TRACE_S,
                is.seed(),
                is.offset(),
                is.faults(),
                is.orders(),
                is.rounds(),
                is.law(),
                is.against(),
                is.gates());
    }
}
