package rimeward.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import rimeward.core.outlook.PlanPromise;
import rimeward.core.tunnel.Figure;

final class PlanScoreTest {
    private static final LocalDate EVENING = LocalDate.of(2026, 1, 10);

    private static PlanPromise promise(double chanceCold) {
        return new PlanPromise(
                EVENING,
                1_768_060_800,
                4,
                new Figure(-6, 1.5),
                new Figure(4.8, 0.2),
                new Figure(20, 3),
                new Figure(4, 0.6),
                new Figure(2, 0.5),
                chanceCold,
                true,
                1.5,
                0.4,
                0.25);
    }

    private static Night night(Lowest bench) {
        return new Night(
                EVENING,
                bench,
                new Lowest.Seen(-7.5),
                60_000,
                0,
                List.of(new Night.Use("heater", 21, 40), new Night.Use("dryer", 2, 3)),
                5,
                2.5,
                0);
    }

    @Test
    void whatCameIsHeldAgainstWhatWasPlanned() {
        PlanScore score = PlanScore.of(promise(0.1), night(new Lowest.Seen(4.5)));
        assertThat(score.outsideK()).hasValue(-1.5);
        assertThat(score.benchK().orElseThrow()).isCloseTo(-0.3, within(1e-9));
        assertThat(score.kWh()).as("less what was taken before").isCloseTo(23 - 1.5 - 20, within(1e-9));
        assertThat(score.cost()).isCloseTo(5 - 0.4 - 4, within(1e-9));
        assertThat(score.litres()).isCloseTo(2.5 - 0.25 - 2, within(1e-9));
        assertThat(score.brier().orElseThrow()).isCloseTo(0.01, within(1e-9));
        assertThat(score.inWords("GBP"))
                .isEqualTo("outside -1.5 K, bench -0.3 K, +1.5 kWh, +0.60 GBP, +0.3 L, Brier 0.010 (was a guess)");
    }

    @Test
    void aFrostThatWasThoughtUnlikelyScoresBadly() {
        assertThat(PlanScore.of(promise(0.1), night(new Lowest.Seen(3.9)))
                        .brier()
                        .orElseThrow())
                .isCloseTo(0.81, within(1e-9));
    }

    @Test
    void whatNobodySawHasNoScore() {
        PlanScore score = PlanScore.of(promise(0.1), night(new Lowest.Unseen()));
        assertThat(score.benchK()).isEmpty();
        assertThat(score.brier()).isEmpty();
        assertThat(score.inWords("")).contains("bench unseen", "Brier unseen");
    }

    @Test
    void aPromiseIsKeptAsOneLine() {
        PlanPromise promise = promise(0.125);
        assertThat(PlanPromise.parse(promise.toText())).isEqualTo(promise);
        assertThat(promise.toText()).doesNotContain("\n");
        assertThatThrownBy(() -> PlanPromise.parse("plan9 x")).hasMessageContaining("no plan that this program knows");
        assertThatThrownBy(() -> PlanPromise.parse(promise.toText().replace("2026-01-10", "yesterday")))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
