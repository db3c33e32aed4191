package rimeward.winter;

import java.util.List;
import java.util.Locale;
import rimeward.air.MoistAir;
import rimeward.air.Saturation;
import rimeward.core.Outcome;
import rimeward.core.decision.DutyLaw;
import rimeward.core.tunnel.DampQuarter;
import rimeward.core.tunnel.Figure;
import rimeward.core.tunnel.Moisture;
import rimeward.core.tunnel.MoistureFit;
import rimeward.core.tunnel.TunnelEstimate;
import rimeward.record.DampQuarters;
import rimeward.record.FrameRow;
import rimeward.sim.physics.WaterPath;
import rimeward.sim.run.LawChoice;
import rimeward.sim.run.LawLabel;
import rimeward.sim.run.Replay;
import rimeward.sim.scenario.Scenario;
import rimeward.sim.world.Truth;

/**
 * What nine days of frost teach of the damp of tunnels that nobody has seen, and how well the five nights after them are foretold by it.
 * The tunnel's heat is as the settings assume. Prints a table and asserts nothing. Arguments: first seed, how many.
 */
final class MoistureBench {
    private static final int DAYS = 14;
    private static final int LEARNED_DAYS = 9;
    private static final int DAY_QUARTERS = 96;
    private static final int MINUTE_MS = 60_000;

    private MoistureBench() {}

    public static void main(String[] args) {
        System.out.println(
                "seed  exchange g/s: truth  assumed  learned +-95 %   wetting g/s: truth  assumed  learned +-95 %"
                        + "   damp of later nights off %: assumed  learned");
        long first = Long.parseLong(args[0]);
        for (long seed = first; seed < first + Long.parseLong(args[1]); seed++) {
            Scenario made = new RandomWinter(seed, DAYS).frosty();
            System.out.println(seed + "  " + look(ChangedLoss.quick(made, made.tunnel())));
        }
    }

    private static String look(Scenario scenario) {
        DampQuarters found = new DampQuarters(scenario.site());
        Flows flows = new Flows();
        Replay.run(scenario, new LawChoice(new LawLabel("duty", "ours", true), new DutyLaw()), (outcome, truth) -> {
            flows.look(outcome, truth);
            if (outcome.frame().tick().elapsedMs() % MINUTE_MS < scenario.tickS() * 1000L) {
                found.add(FrameRow.of(outcome, false));
            }
        });
        List<DampQuarter> all = found.found();
        int learned = Math.min(all.size(), LEARNED_DAYS * DAY_QUARTERS);
        List<DampQuarter> later = all.subList(learned, all.size());
        TunnelEstimate assumed = TunnelEstimate.assumed(scenario.site());
        Moisture lesson = MoistureFit.of(scenario.site(), assumed, all.subList(0, learned));
        TunnelEstimate then = lesson instanceof Moisture.Learned moisture ? moisture.in(assumed) : assumed;
        return text(flows.exchangeKgPerS(), assumed.airExchangeKgPerS(), then.airExchangeKgPerS())
                + text(flows.wettingKgPerS(), assumed.wettingKgPerS(), then.wettingKgPerS())
                + String.format(
                        Locale.ROOT,
                        " %30.1f %8.1f  %s",
                        100 * MoistureFit.missedShare(scenario.site(), assumed, later),
                        100 * MoistureFit.missedShare(scenario.site(), then, later),
                        lesson instanceof Moisture.Unclear unclear ? unclear.why() : "");
    }

    private static String text(double truthKgPerS, Figure assumed, Figure learned) {
        return String.format(
                Locale.ROOT,
                "%19.1f %8.1f %8.1f %6.1f",
                1000 * truthKgPerS,
                1000 * assumed.value(),
                1000 * learned.value(),
                1000 * (learned.most() - learned.value()));
    }

    /** What truly moved in the dark, and what drove it. */
    private static final class Flows {
        private double leakedKg;
        private double evaporatedKg;
        private double leakageS;
        private double evaporationS;
        private double lastLeakedKg;
        private double lastEvaporatedKg;
        private long lastMs;

        void look(Outcome outcome, Truth truth) {
            long atMs = outcome.frame().tick().elapsedMs();
            double inKg = truth.water().movedKg(WaterPath.LEAKAGE);
            double upKg = truth.water().movedKg(WaterPath.EVAPORATION);
            if (NightMeans.isNight(outcome.frame().tick().wall().epochMs())) {
                double lastedS = (atMs - lastMs) / 1000.0;
                double outside = MoistAir.humidityRatioKgPerKg(truth.outsideVapourPa(), truth.pressurePa());
                double wet = MoistAir.humidityRatioKgPerKg(Saturation.overWaterPa(truth.massC()), truth.pressurePa());
                leakedKg += inKg - lastLeakedKg;
                evaporatedKg += upKg - lastEvaporatedKg;
                leakageS += (outside - truth.humidityKgPerKg()) * lastedS;
                evaporationS += (wet - truth.humidityKgPerKg()) * lastedS;
            }
            lastLeakedKg = inKg;
            lastEvaporatedKg = upKg;
            lastMs = atMs;
        }

        double exchangeKgPerS() {
            return leakedKg / leakageS;
        }

        double wettingKgPerS() {
            return evaporatedKg / evaporationS;
        }
    }
}
