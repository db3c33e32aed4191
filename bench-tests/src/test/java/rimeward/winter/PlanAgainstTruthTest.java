package rimeward.winter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rimeward.air.MoistAir;
import rimeward.core.outlook.Course;
import rimeward.core.outlook.NightPlan;
import rimeward.core.outlook.PlanChoices;
import rimeward.core.outlook.PlanStart;
import rimeward.core.tunnel.Figure;
import rimeward.core.tunnel.TunnelEstimate;
import rimeward.sim.run.Laws;
import rimeward.sim.run.Quantity;
import rimeward.sim.run.Replay;
import rimeward.sim.run.Trace;
import rimeward.sim.scenario.Overrides;
import rimeward.sim.scenario.Scenario;
import rimeward.sim.scenario.ScenarioFile;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/**
 * The plan against whole simulated nights under the real law, with the true weather. The simulated tunnel has no two nodes, so its numbers
 * are those that fit its true nights best: what is tried is the plan, not the learning.
 */
final class PlanAgainstTruthTest {
    private static final int HOUR_S = 3600;
    private static final double DRYER_YIELD = 1.2;

    private final Scenario scenario;
    private final Trace trace;
    private final Site site;

    PlanAgainstTruthTest() throws Exception {
        scenario = ScenarioFile.read(Path.of("..", "config", "scenarios", "heater-too-small.toml"), Overrides.NONE);
        trace = Replay.run(scenario, Laws.find("duty")).trace();
        site = scenario.site();
    }

    @Test
    void coldNightsComeAsPlanned() {
        TunnelEstimate fitted = fitted();
        int nights = 0;
        for (long fromS : evenings()) {
            Night was = new Night(rows(fromS, fromS + 13 * HOUR_S));
            NightPlan plan = was.planned(fitted);
            nights++;
            assertThat(plan.kWh().value()).as("night %d, kWh", nights).isCloseTo(was.kWh(), within(0.12 * was.kWh()));
            assertThat(plan.lowestBenchC().value()).as("night %d, °C", nights).isCloseTo(was.lowestC(), within(0.6));
            boolean cold = was.lowestC() < site.floorC();
            assertThat(plan.chanceCold() > 0.5).as("night %d, cold", nights).isEqualTo(cold);
        }
        assertThat(nights).isGreaterThanOrEqualTo(3);
    }

    /** Heat loss, coupling and ground by least squares over the sunless hours of the truth. */
    private TunnelEstimate fitted() {
        List<double[]> hours = new ArrayList<>();
        double liftLift = 0;
        double liftOver = 0;
        double overOver = 0;
        double liftHeat = 0;
        double overHeat = 0;
        for (long fromS = trace.epochS(0); fromS < trace.epochS(trace.rows() - 1); fromS += HOUR_S) {
            int[] rows = rows(fromS, fromS + HOUR_S - 1);
            if (rows[1] - rows[0] < 2 || mean(rows, Quantity.SUN_W_PER_M2) > 0) {
                continue;
            }
            double lift = mean(rows, Quantity.AIR_C) - mean(rows, Quantity.OUTSIDE_C);
            double over = mean(rows, Quantity.AIR_C) - mean(rows, Quantity.MASS_C);
            double heat = heatW(rows);
            liftLift += lift * lift;
            liftOver += lift * over;
            overOver += over * over;
            liftHeat += lift * heat;
            overHeat += over * heat;
            double massK = trace.at(Quantity.MASS_C, rows[1] - 1) - trace.at(Quantity.MASS_C, rows[0]);
            hours.add(new double[] {over, massK / HOUR_S});
        }
        double determinant = liftLift * overOver - liftOver * liftOver;
        double lossWPerK = (liftHeat * overOver - overHeat * liftOver) / determinant;
        double couplingWPerK = (overHeat * liftLift - liftHeat * liftOver) / determinant;
        double massJPerK = site.tunnel().massCapacityJPerK();
        double groundW = hours.stream()
                .mapToDouble(hour -> massJPerK * hour[1] - couplingWPerK * hour[0])
                .average()
                .orElseThrow();
        TunnelEstimate assumed = TunnelEstimate.assumed(site);
        return new TunnelEstimate(
                new Figure(lossWPerK, 0.03 * lossWPerK),
                new Figure(couplingWPerK, 0.1 * couplingWPerK),
                assumed.airCapacityJPerK(),
                assumed.massCapacityJPerK(),
                new Figure(groundW, 60),
                new Figure(1, 0.02),
                new Figure(DRYER_YIELD, 0.1),
                assumed.airExchangeKgPerS(),
                assumed.wettingKgPerS(),
                5);
    }

    private double heatW(int[] rows) {
        double sumW = 0;
        for (int row = rows[0]; row < rows[1]; row++) {
            sumW += trace.powerW(0, row) + trace.powerW(1, row) + DRYER_YIELD * trace.powerW(2, row);
        }
        return sumW / (rows[1] - rows[0]);
    }

    private double mean(int[] rows, Quantity quantity) {
        double sum = 0;
        for (int row = rows[0]; row < rows[1]; row++) {
            sum += trace.at(quantity, row);
        }
        return sum / (rows[1] - rows[0]);
    }

    /** Six in the evening of each day whose night is whole. */
    private List<Long> evenings() {
        List<Long> evenings = new ArrayList<>();
        long endS = trace.epochS(trace.rows() - 1);
        for (long atS = trace.epochS(0); atS + 13 * HOUR_S <= endS; atS += 300) {
            if (Math.floorMod(atS + scenario.offset().getTotalSeconds(), 86_400) == 18 * HOUR_S) {
                evenings.add(atS);
            }
        }
        return evenings;
    }

    /** Rows from a time, inclusive, to another, inclusive: the first, and the one after the last. */
    private int[] rows(long fromS, long toS) {
        int from = 0;
        while (from < trace.rows() && trace.epochS(from) < fromS) {
            from++;
        }
        int to = from;
        while (to < trace.rows() && trace.epochS(to) <= toS) {
            to++;
        }
        return new int[] {from, to};
    }

    /** One night of the truth. */
    private final class Night {
        private final int[] rows;

        Night(int[] rows) {
            this.rows = rows;
        }

        double kWh() {
            double kWh = 0;
            for (int row = rows[0]; row + 1 < rows[1]; row++) {
                double hours = (trace.epochS(row + 1) - trace.epochS(row)) / 3600.0;
                kWh += (trace.powerW(0, row) + trace.powerW(1, row) + trace.powerW(2, row)) * hours / 1000;
            }
            return kWh;
        }

        double lowestC() {
            double lowestC = Double.POSITIVE_INFINITY;
            for (int row = rows[0]; row < rows[1]; row++) {
                lowestC = Math.min(lowestC, trace.at(Quantity.COLDEST_BENCH_C, row));
            }
            return lowestC;
        }

        NightPlan planned(TunnelEstimate estimate) {
            int first = rows[0];
            PlanStart start = new PlanStart(
                    trace.epochS(first),
                    trace.at(Quantity.AIR_C, first),
                    OptionalDouble.of(trace.at(Quantity.MASS_C, first)),
                    OptionalDouble.of(trace.at(Quantity.RH_PERCENT, first)),
                    OptionalDouble.empty());
            double cornerK = mean(rows, Quantity.AIR_C) - mean(rows, Quantity.COLDEST_BENCH_C);
            PlanChoices choices = new PlanChoices(cornerK, 0.3, RelaySet.none(), PlanChoices.USUAL_CHANCE);
            return NightPlan.of(site, estimate, course(), start, choices);
        }

        private Course course() {
            List<Course.Step> steps = new ArrayList<>();
            long nextS = trace.epochS(rows[0]);
            for (int row = rows[0]; row < rows[1]; row++) {
                if (trace.epochS(row) >= nextS) {
                    double humidity = trace.at(Quantity.OUTSIDE_HUMIDITY_G_PER_KG, row) / 1000;
                    double vapourPa = MoistAir.vapourPa(
                            humidity, MoistAir.pressurePa(site.tunnel().altitudeM()));
                    steps.add(new Course.Step(
                            trace.epochS(row), trace.at(Quantity.OUTSIDE_C, row), 0.3, MoistAir.dewPointC(vapourPa)));
                    nextS += 600;
                }
            }
            return new Course(new Course.Basis.Forecasted("the truth", trace.epochS(rows[0]), 9), steps);
        }
    }
}
