package rimeward.sim.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import rimeward.sim.check.Breach;
import rimeward.sim.check.Property;
import rimeward.sim.run.Comparison;
import rimeward.sim.run.RunResult;
import rimeward.sim.run.Shortfall;
import rimeward.sim.run.Summary;

final class VerdictTest {
    private static final long AT_S = ToyNight.START_S + 10 * 3600 + 600; // Wed 7 Jan 2026 02:10

    private final Comparison quiet = ToyNight.comparison(2, false, "weak");

    @Test
    void saysThatTheFloorHeldWhereItWasLowestAndWhatItCost() {
        Verdict verdict = of(summary(4.62, 0, 0, 3.9, new Shortfall.None(), List.of()));
        assertThat(verdict.word()).isEqualTo("Held");
        assertThat(verdict.text())
                .isEqualTo(
                        "The floor of 4.0 °C held throughout: lowest 4.6 °C on the bench cold-corner, Wed 7 Jan 02:10."
                                + " No gap. 11.2 kWh, 3.36 €, 3.9 L of water taken out.");
    }

    @Test
    void namesTheShortfallWhenTheFloorBroke() {
        Verdict verdict = of(summary(2.9, 7800, 0, 0, new Shortfall.Missing(1.1, AT_S, 312), List.of()));
        assertThat(verdict.word()).isEqualTo("Broke");
        assertThat(verdict.text())
                .startsWith("The floor of 4.0 °C broke: 2 h 10 min below it, lowest 2.9 °C on the bench cold-corner,"
                        + " Wed 7 Jan 02:10, 1.1 K short; about 312 W of heat were missing.")
                .doesNotContain("held")
                .endsWith("11.2 kWh, 3.36 €.");
    }

    @Test
    void aGapIsNeverCalledHeldAlone() {
        Verdict verdict = of(summary(4.2, 0, 45, 0, new Shortfall.None(), List.of()));
        assertThat(verdict.word()).isEqualTo("Held, with a gap");
        assertThat(verdict.text()).contains("Gap: 45 s near the floor with heat in hand and nobody giving it.");
    }

    @Test
    void brokenRulesAreNamed() {
        Breach breach = new Breach(Property.P4_REST, AT_S, 5, "heater-1 rested 20 s of 60 s");
        assertThat(of(summary(4.2, 0, 0, 0, new Shortfall.None(), List.of(breach)))
                        .text())
                .contains("A rule was broken: rest.");
    }

    @Test
    void countsHandOversAndAlerts() {
        Comparison night = ToyNight.comparison(48, true, "duty");
        assertThat(Verdict.of(night, night.results().get(0)).text())
                .containsPattern(
                        "No gap: each of the \\d+ times the dryer gave up the warm duty, first Tue 6 Jan 21:\\d\\d")
                .contains("Planted: the fuse of heater-1 is blown from Wed 7 Jan 02:00. No gap")
                .contains("The grower was told once, Wed 7 Jan 02:10: Heat is not arriving.");
    }

    private Verdict of(Summary summary) {
        RunResult run = quiet.results().get(0);
        return Verdict.of(quiet, new RunResult(run.law(), summary, run.trace(), List.of(), List.of()));
    }

    private static Summary summary(
            double lowestC, long belowS, long gapS, double litres, Shortfall shortfall, List<Breach> breaches) {
        return new Summary(
                lowestC,
                "cold-corner",
                AT_S,
                belowS,
                gapS,
                0,
                0,
                0,
                9,
                2.2,
                0,
                3.36,
                "€",
                litres,
                List.of(),
                0,
                0,
                0,
                breaches,
                shortfall);
    }
}
