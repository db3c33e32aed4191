package rimeward.core.tunnel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Made nights, whose loss differs by 7 % from one to the next as wind and cloud make it. */
class LossTrackTest {
    private static final long DAY_S = 86_400;
    private static final double A_QUARTER_MORE = StrictMath.log(1.25);

    private final Random chance = new Random(11);
    private long day;

    private LossNight night(double logFactor) {
        day++;
        return new LossNight(day * DAY_S, logFactor + 0.07 * chance.nextGaussian(), 0.05);
    }

    private LossTrack known() {
        List<LossNight> nights = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            nights.add(night(0));
        }
        return LossTrack.begun(nights);
    }

    private LossTrack later(LossTrack track, int nights, double logFactor) {
        LossTrack now = track;
        for (int i = 0; i < nights; i++) {
            now = now.after(night(logFactor));
        }
        return now;
    }

    private LossTrack told(LossTrack track, double logFactor) {
        LossTrack now = track;
        for (int i = 0; i < 15; i++) {
            now = now.after(night(logFactor));
            if (now.change().isPresent()) {
                return now;
            }
        }
        throw new AssertionError("not told within 15 nights");
    }

    @Test
    void windAndCloudAreNoChange() {
        int alarms = 0;
        for (int winter = 0; winter < 10; winter++) {
            LossTrack now = known();
            for (int i = 0; i < 180; i++) {
                boolean stood = now.change().isPresent();
                now = now.after(night(0));
                alarms += now.change().isPresent() && !stood ? 1 : 0;
            }
        }
        assertThat(alarms).isLessThanOrEqualTo(3);
    }

    @Test
    void aSlippedCoverIsToldWithinDaysWithItsSizeAndItsNight() {
        LossTrack before = later(known(), 30, 0);
        LossTrack after = told(before, A_QUARTER_MORE);
        LossChange change = after.change().orElseThrow();
        assertThat(change.isMore()).isTrue();
        assertThat(after.lastEpochS() - before.lastEpochS()).isLessThanOrEqualTo(9 * DAY_S);
        assertThat(change.percent()).isCloseTo(25, within(12.0));
        assertThat(25.0).isBetween(change.leastPercent(), change.mostPercent());
        assertThat(change.sinceEpochS() - before.lastEpochS()).isBetween(-2 * DAY_S, 3 * DAY_S);
    }

    @Test
    void anAddedScreenIsToldAsLess() {
        LossChange change =
                told(later(known(), 20, 0), StrictMath.log(0.8)).change().orElseThrow();
        assertThat(change.isMore()).isFalse();
        assertThat(change.percent()).isCloseTo(-20, within(10.0));
    }

    @Test
    void theSizeGetsBetterKnownWithTheNights() {
        LossTrack told = told(later(known(), 20, 0), A_QUARTER_MORE);
        LossChange early = told.change().orElseThrow();
        LossChange late = later(told, 10, A_QUARTER_MORE).change().orElseThrow();
        assertThat(late.mostPercent() - late.leastPercent()).isLessThan(early.mostPercent() - early.leastPercent());
        assertThat(late.sinceEpochS()).isEqualTo(early.sinceEpochS());
    }

    @Test
    void mendedItIsUsualAgain() {
        LossTrack torn = later(told(later(known(), 20, 0), A_QUARTER_MORE), 5, A_QUARTER_MORE);
        assertThat(later(torn, 10, 0).change()).isEmpty();
    }

    @Test
    void whatFollowsIsAnotherChange() {
        LossTrack first = later(told(later(known(), 20, 0), StrictMath.log(1.2)), 5, StrictMath.log(1.2));
        LossChange second = later(first, 8, StrictMath.log(1.7)).change().orElseThrow();
        assertThat(second.sinceEpochS())
                .isGreaterThan(first.change().orElseThrow().sinceEpochS());
        assertThat(second.percent()).isCloseTo(70, within(20.0));
    }

    @Test
    void afterThreeWeeksItIsTheTunnelsNewUsual() {
        LossTrack torn = told(later(known(), 20, 0), A_QUARTER_MORE);
        assertThat(later(torn, 12, A_QUARTER_MORE).change()).isPresent();
        LossTrack taken = later(torn, 21, A_QUARTER_MORE);
        assertThat(taken.change()).isEmpty();
        assertThat(taken.usual().mean()).isCloseTo(A_QUARTER_MORE, within(0.07));
    }

    @Test
    void acceptedItIsUsualAtOnce() {
        LossTrack torn = told(later(known(), 20, 0), A_QUARTER_MORE);
        assertThat(later(torn.taken(), 10, A_QUARTER_MORE).change()).isEmpty();
    }

    @Test
    void oneWildNightOrTwoAreNotBelieved() {
        LossTrack now = later(known(), 30, 0);
        assertThat(later(now, 2, 1).change()).isEmpty();
    }

    @Test
    void aSeasonThatDriftsIsFollowed() {
        LossTrack now = known();
        for (int i = 0; i < 120; i++) {
            now = now.after(night(0.001 * i));
            assertThat(now.change()).isEmpty();
        }
        assertThat(now.usual().mean()).isBetween(0.04, 0.12);
    }

    @Test
    void aDoubtfulNightCountsForLess() {
        LossLevel level = LossLevel.of(List.of(new LossNight(0, 0, 0.05), new LossNight(DAY_S, 0, 0.05)));
        LossLevel surely = level.after(new LossNight(2 * DAY_S, 0.3, 0.02));
        LossLevel hardly = level.after(new LossNight(2 * DAY_S, 0.3, 0.5));
        assertThat(hardly.mean()).isLessThan(surely.mean() / 4);
    }
}
