package rimeward.sim.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneOffset;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import rimeward.sim.scenario.Gate;
import rimeward.sim.scenario.Gates;

class GateKeeperTest {
    private static final ScenarioHeader TWO_DAYS =
            new ScenarioHeader("x", "X", "x", "none", 0, 2 * 86_400, 5, 1, ZoneOffset.UTC, List.of());

    private static RunResult run(String law, double kWh, long gapS) {
        Summary summary = new Summary(
                4.5,
                "north bench",
                0,
                90,
                gapS,
                0,
                0,
                7200,
                kWh,
                0,
                0,
                kWh / 4,
                "GBP",
                0,
                List.of(new MachineUse("heater", 30, 100, 100, kWh)),
                3,
                0,
                0,
                List.of(),
                new Shortfall.None());
        Trace trace = new TraceBuilder(1).build();
        return new RunResult(new LawLabel(law, "", true), summary, trace, List.of(), List.of());
    }

    private static List<GateVerdict> verdicts(Map<Gate, Double> limits, RunResult... results) {
        return new GateKeeper(TWO_DAYS, List.of(results)).verdicts(new Gates(limits));
    }

    @Test
    void onlyTheFirstLawIsJudgedEachGateInItsOwnUnit() {
        Map<Gate, Double> limits = new EnumMap<>(Gate.class);
        limits.put(Gate.LEAST_BENCH_C, 4.6);
        limits.put(Gate.MOST_BELOW_FLOOR_MIN, 1.5);
        limits.put(Gate.MOST_GAP_S, 0.0);
        limits.put(Gate.MOST_ABOVE_RH_TARGET_H, 1.9);
        limits.put(Gate.MOST_STARTS_A_DAY, 15.0);
        assertThat(verdicts(limits, run("duty", 20, 0), run("thermostat", 40, 500)))
                .containsExactly(
                        new GateVerdict("duty", "least_bench_C", 4.5, 4.6, false),
                        new GateVerdict("duty", "most_below_floor_min", 1.5, 1.5, true),
                        new GateVerdict("duty", "most_gap_s", 0, 0, true),
                        new GateVerdict("duty", "most_above_rh_target_h", 2, 1.9, false),
                        new GateVerdict("duty", "most_starts_a_day", 15, 15, true));
    }

    @Test
    void aShareOfARivalNeedsTheRival() {
        Map<Gate, Double> limits = Map.of(Gate.MOST_SHARE_OF_ALWAYS_ON, 0.6);
        assertThat(verdicts(limits, run("duty", 20, 0))).isEmpty();
        assertThat(verdicts(limits, run("duty", 20, 0), run("always-on", 40, 0)))
                .containsExactly(new GateVerdict("duty", "most_share_of_always_on", 0.5, 0.6, true));
    }

    @Test
    void keysAreSpeltWithTheirUnits() {
        assertThat(Gate.MOST_TOTAL_KWH.key()).isEqualTo("most_total_kWh");
        assertThat(Gate.LEAST_BENCH_C.key()).isEqualTo("least_bench_C");
    }
}
