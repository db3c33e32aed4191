package rimeward.sim.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rimeward.alert.AlertKind;
import rimeward.core.guard.Holder;
import rimeward.sim.check.Property;
import rimeward.sim.scenario.Overrides;
import rimeward.sim.scenario.Scenario;
import rimeward.sim.scenario.ScenarioFile;
import rimeward.sim.scenario.SmallNight;

/** A recorded night from noon to noon, down to −9.9 °C, with what goes wrong. */
class ReplayTest {
    private static final long NOON_S = 1_390_842_000;
    private static final int HOUR_S = 3600;

    @TempDir
    private Path folder;

    private Scenario night(String more) throws Exception {
        return ScenarioFile.read(
                Files.writeString(folder.resolve("night.toml"), SmallNight.TEXT + more), Overrides.NONE);
    }

    private static String fault(String at, String kind, String more) {
        return "[[fault]]\nat = \"" + at + "\"\nkind = \"" + kind + "\"\n" + more;
    }

    private RunResult run(String law, String more) throws Exception {
        return Replay.run(night(more), Laws.find(law));
    }

    private static int row(Trace trace, long epochS) {
        int row = 0;
        while (trace.epochS(row) < epochS) {
            row++;
        }
        return row;
    }

    @Test
    void ledgersCloseAndTheSumsAgreeWithTheTrace() throws Exception {
        RunResult result = run("duty", "");
        Summary summary = result.summary();
        assertThat(summary.heatClosure()).isLessThan(1e-9);
        assertThat(summary.waterClosure()).isLessThan(1e-9);
        Trace trace = result.trace();
        double lowestC = 99;
        double energyJ = 0;
        for (int row = 0; row + 1 < trace.rows(); row++) {
            lowestC = Math.min(lowestC, trace.at(Quantity.COLDEST_BENCH_C, row));
            for (int machine = 0; machine < trace.machines(); machine++) {
                energyJ += trace.powerW(machine, row) * (trace.epochS(row + 1) - trace.epochS(row));
            }
        }
        assertThat(lowestC).isCloseTo(summary.lowestBenchC(), within(0.05));
        assertThat(energyJ / 3.6e6).isCloseTo(summary.totalKWh(), within(0.01 * summary.totalKWh()));
        assertThat(summary.machines().stream()
                        .mapToDouble(MachineUse::energyKWh)
                        .sum())
                .isCloseTo(summary.totalKWh(), within(1e-9));
        assertThat(summary.shortfall()).isEqualTo(new Shortfall.None());
    }

    @Test
    void aRowAtEveryMinuteAndAtEveryChangeOfARelay() throws Exception {
        RunResult result = run("duty", "");
        Trace trace = result.trace();
        assertThat(trace.epochS(0)).isEqualTo(NOON_S);
        for (int row = 1; row < trace.rows(); row++) {
            assertThat(trace.epochS(row) - trace.epochS(row - 1)).isBetween(1L, 60L);
        }
        for (SwitchEvent event : result.switches()) {
            int row = row(trace, event.epochS());
            assertThat(trace.epochS(row)).isEqualTo(event.epochS());
            assertThat(trace.closed(row).has(event.machine())).isEqualTo(event.on());
        }
    }

    @Test
    void inAPowerCutNothingRunsNobodyDecidesAndAfterwardsTheGrowerIsTold() throws Exception {
        RunResult result = run("duty", fault("23:00", "power-cut", "lasts = \"30m\"\n"));
        long cutS = NOON_S + 11 * HOUR_S;
        assertThat(result.switches()).noneMatch(event -> event.epochS() >= cutS && event.epochS() < cutS + 1830);
        Trace trace = result.trace();
        for (int row = row(trace, cutS + 60); trace.epochS(row) < cutS + 1800; row++) {
            assertThat(trace.isPowered(row)).isFalse();
            assertThat(trace.isGap(row)).isFalse();
            assertThat(trace.powerW(0, row) + trace.powerW(1, row) + trace.powerW(2, row))
                    .isZero();
        }
        assertThat(result.alerts())
                .anyMatch(alert -> alert.raised()
                        && alert.kind() == AlertKind.POWER_WAS_CUT
                        && alert.epochS() >= cutS + 1800
                        && alert.epochS() < cutS + 1900);
        assertThat(result.summary().breaches()).isEmpty();
    }

    @Test
    void whileTheControllerStartsTheFirstStageIsLeftToItsOwnThermostat() throws Exception {
        RunResult result = run("duty", fault("day 2 05:00", "power-cut", "lasts = \"10m\"\n"));
        long backS = NOON_S + 17 * HOUR_S + 600;
        int row = row(result.trace(), backS);
        assertThat(result.trace().epochS(row)).isEqualTo(backS);
        assertThat(result.trace().closed(row).has(0)).isTrue();
        assertThat(result.trace().powerW(0, row)).isEqualTo(1500);
        assertThat(result.trace().powerW(1, row)).isZero();
    }

    @Test
    void byHandThePlugsStayAsTheyWereThroughAPowerCut() throws Exception {
        RunResult result = run("always-on", fault("day 2 05:00", "power-cut", "lasts = \"10m\"\n"));
        int row = row(result.trace(), NOON_S + 17 * HOUR_S + 600);
        assertThat(result.trace().closed(row).has(1)).isTrue();
        assertThat(result.summary().machines().get(0).starts()).isEqualTo(1);
        assertThat(result.alerts()).as("nobody is there to tell").isEmpty();
    }

    @Test
    void aRestartOfTheControllerCostsHalfAMinuteAndNoFloor() throws Exception {
        RunResult result = run("duty", fault("day 2 04:00", "controller-restart", ""));
        assertThat(result.summary().belowFloorS()).isZero();
        assertThat(result.summary().gapS()).isZero();
        long atS = NOON_S + 16 * HOUR_S;
        assertThat(result.switches()).noneMatch(event -> event.epochS() > atS && event.epochS() < atS + 30);
    }

    @Test
    void aWrongClockOnTheWallChangesNoRelay() throws Exception {
        List<SwitchEvent> straight = run("duty", "").switches();
        List<SwitchEvent> jumped =
                run("duty", fault("22:00", "clock-jump", "by_s = -7200\n")).switches();
        assertThat(jumped).isEqualTo(straight);
    }

    @Test
    void withoutAForecastByHandDoesNothing() throws Exception {
        RunResult told = run("by-hand", "");
        RunResult untold = run("by-hand", fault("12:00", "forecast-lost", ""));
        assertThat(told.summary().heaterKWh()).isGreaterThan(10);
        assertThat(untold.summary().totalKWh()).isZero();
    }

    @Test
    void rivalsAreShownHonestly() throws Exception {
        RunResult result = run("dryer-alone", "");
        assertThat(result.law().guarded()).isFalse();
        assertThat(result.summary().gapS()).isGreaterThan(HOUR_S);
        assertThat(result.summary().shortfall()).isInstanceOf(Shortfall.Missing.class);
        Trace trace = result.trace();
        int coldest = row(trace, result.summary().lowestEpochS());
        assertThat(trace.holder(coldest)).isIn(Holder.NOBODY, Holder.DRYER);
        assertThat(trace.isNeeded(coldest)).isTrue();
    }

    @Test
    void aHeaterTooSmallBreaksTheFloorAndNobodyIsToBlame() throws Exception {
        RunResult result = run("duty", """
                [settings]
                dryer = "none"
                [settings.heater]
                dead_time_s = 180
                [[settings.heater.stage]]
                id = "heater-1"
                rated_W = 1000
                min_on_s = 60
                min_rest_s = 60
                max_starts_per_h = 12
                power_feedback = true
                """);
        Summary summary = result.summary();
        assertThat(summary.belowFloorS()).isGreaterThan(HOUR_S);
        assertThat(summary.gapS()).isZero();
        assertThat(summary.breaches()).noneMatch(breach -> breach.property() == Property.P1_FLOOR);
        assertThat(summary.shortfall()).isInstanceOfSatisfying(Shortfall.Missing.class, missing -> {
            assertThat(missing.deepestK()).isCloseTo(4 - summary.lowestBenchC(), within(1e-9));
            assertThat(missing.missingW()).isBetween(150 * missing.deepestK(), 250 * missing.deepestK());
        });
    }

    @Test
    void theCostIsPaidByTheTariffOfTheHour() throws Exception {
        Summary summary = run("always-on", "").summary();
        assertThat(summary.cost())
                .isGreaterThan(0.13 * summary.totalKWh() + 0.5)
                .isLessThan(0.29 * summary.totalKWh() - 0.5);
        Summary flat = run("always-on", "[settings.tariff]\nday_per_kWh = 0.2\nnight_per_kWh = 0.2\n")
                .summary();
        assertThat(flat.cost()).isCloseTo(0.2 * flat.totalKWh(), within(1e-9));
    }
}
