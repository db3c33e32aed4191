package rimeward.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import rimeward.core.ControlCycle;
import rimeward.core.ControlState;
import rimeward.core.Stepped;
import rimeward.core.decision.DutyLaw;
import rimeward.core.outlook.Outlook;
import rimeward.fixture.Frames;
import rimeward.fixture.Sites;
import rimeward.site.Site;

class NightTallyTest {
    private static final Site SITE = Sites.metered();
    private static final double HOUR_TICKS = 720;

    private final ControlCycle cycle = new ControlCycle(SITE, new DutyLaw());
    private final Frames frames = Frames.steady(8, 90);
    private final List<Night> ended = new ArrayList<>();
    private ControlState state = cycle.start();

    private void hours(NightTally tally, double hours, int raisedAtEach) {
        for (int i = 0; i < hours * HOUR_TICKS; i++) {
            Stepped stepped = cycle.step(state, frames.jitter((i % 5) * 0.01).after(5), Outlook.NONE);
            tally.add(stepped.outcome(), raisedAtEach).ifPresent(ended::add);
            state = stepped.next();
        }
    }

    @Test
    void anHourOfTheMetersPowerIsPaidByTheTariff() {
        NightTally tally = new NightTally(SITE, ZoneOffset.UTC);
        frames.power(Sites.STAGE_1, Frames.value(950));
        hours(tally, 1, 0);
        Night night = tally.open().orElseThrow();
        assertThat(night.machines().get(Sites.STAGE_1).kWh())
                .isCloseTo(0.95, within(0.003)); // its jitter stays out of the meter
        assertThat(night.cost()).isCloseTo(0.95 * 0.30, within(0.001)); // 0.30 a kWh, by the fixture's tariff
        assertThat(night.seenS()).isEqualTo(3595);
        assertThat(night.wetS()).isEqualTo(3595);
        assertThat(night.bench()).isEqualTo(new Lowest.Seen(8));
    }

    @Test
    void aNightEndsAtLocalNoonAndTheNextBeginsAtNothing() {
        // 16:00 UTC is 11:00 in New York: an hour to noon
        NightTally tally = new NightTally(SITE, ZoneId.of("America/New_York"));
        hours(tally, 2, 1);
        assertThat(ended).singleElement().satisfies(night -> {
            assertThat(night.evening()).isEqualTo(LocalDate.of(2025, 11, 23));
            assertThat(night.alerts()).isEqualTo(719);
        });
        assertThat(tally.open().orElseThrow().evening()).isEqualTo(LocalDate.of(2025, 11, 24));
        assertThat(tally.open().orElseThrow().seenS()).isBetween(3595.0, 3605.0);
    }

    @Test
    void aResumedNightGoesOn() {
        NightTally before = new NightTally(SITE, ZoneOffset.UTC);
        frames.power(Sites.DRYER, Frames.value(600));
        hours(before, 1, 0);
        NightTally after = new NightTally(SITE, ZoneOffset.UTC);
        Night saved = before.open().orElseThrow();
        after.resume(saved);
        assertThat(after.open()).contains(saved);
        hours(after, 1, 0);
        assertThat(after.open().orElseThrow().seenS()).isEqualTo(7190);
        assertThat(after.open().orElseThrow().machines().get(Sites.DRYER).kWh()).isGreaterThan(1.19);
    }
}
