package rimeward.core.tunnel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import rimeward.fixture.Sites;

/** A tunnel of two nodes, stepped by the minute and by other code than the model's, that begins to lose more. */
class LossWatchTest {
    private static final long NOON_EPOCH_S = 1_385_899_200; // 2013-12-01T12:00Z
    private static final int DAY_QUARTERS = 96;
    private static final double LOSS_W_PER_K = 180;
    private static final double AIR_J_PER_K = 170_000;
    private static final double MASS_J_PER_K = 5.6e6;
    private static final double COUPLING_W_PER_K = 135;
    private static final int STEP_S = 60;
    private static final List<Double> NOTHING = Collections.nCopies(Stretch.MINUTES, 0.0);

    private final Lesson learned = new Lesson.Learned(
            TunnelEstimate.assumed(Sites.losing(LOSS_W_PER_K)),
            new GreyBox(new GreyBox.Numbers(
                    LOSS_W_PER_K,
                    0.001,
                    COUPLING_W_PER_K,
                    AIR_J_PER_K,
                    MASS_J_PER_K,
                    0,
                    0,
                    1,
                    0.7,
                    300,
                    0.1,
                    0.01,
                    0.05)),
            0.5);

    /** From noon; each day's wind changes the loss by some 5 %. */
    private static List<Stretch> days(int count, int changedDay, double changedBy) {
        Random chance = new Random(4);
        double airC = 6;
        double massC = 7;
        boolean on = false;
        List<Stretch.Quarter> quarters = new ArrayList<>();
        double lossWPerK = LOSS_W_PER_K;
        for (int quarter = 0; quarter < count * DAY_QUARTERS; quarter++) {
            int day = quarter / DAY_QUARTERS;
            int ofDay = quarter % DAY_QUARTERS;
            boolean dark = ofDay >= 24 && ofDay < 72;
            if (ofDay == 0) {
                lossWPerK = LOSS_W_PER_K * (1 + 0.05 * chance.nextGaussian()) * (day < changedDay ? 1 : changedBy);
            }
            double outsideC = -1 + 3 * StrictMath.cos(2 * StrictMath.PI * (ofDay - 8) / DAY_QUARTERS);
            double sunW = dark ? 0 : 900 * StrictMath.abs(StrictMath.sin(day));
            List<Double> heatersW = new ArrayList<>();
            for (int s = 0; s < Stretch.QUARTER_S; s += STEP_S) {
                on = airC < 4.7 || (on && airC < 5.7);
                double heatW = on ? 3000 : 0;
                heatersW.add(heatW);
                double toMassW = COUPLING_W_PER_K * (airC - massC);
                airC += (heatW + 0.3 * sunW - toMassW - lossWPerK * (airC - outsideC)) * STEP_S / AIR_J_PER_K;
                massC += (toMassW + 0.7 * sunW) * STEP_S / MASS_J_PER_K;
            }
            double readC = airC + 0.03 * chance.nextGaussian();
            quarters.add(new Stretch.Quarter(readC, outsideC, heatersW, NOTHING, dark, true));
        }
        return List.of(new Stretch(NOON_EPOCH_S, quarters));
    }

    private static List<Stretch> until(int day, List<Stretch> all) {
        return List.of(new Stretch(NOON_EPOCH_S, all.get(0).quarters().subList(0, day * DAY_QUARTERS)));
    }

    private LossWatch daily(List<Stretch> all, int days) {
        LossWatch watch = LossWatch.NEW;
        for (int day = 1; day <= days; day++) {
            watch = LossWatch.parse(watch.after(learned, until(day, all)).toText());
        }
        return watch;
    }

    @Test
    void eachNightTellsItsOwnLoss() {
        List<LossNight> nights =
                new LossNights(((Lesson.Learned) learned).box().numbers()).after(Long.MIN_VALUE, days(12, 6, 1.3));
        assertThat(nights).hasSize(12);
        double before = LossLevel.of(nights.subList(1, 6)).mean();
        double after = LossLevel.of(nights.subList(6, 12)).mean();
        assertThat(before).isCloseTo(0, within(0.06));
        assertThat(after - before).isCloseTo(StrictMath.log(1.3), within(0.08));
        assertThat(nights.get(0).epochS()).isEqualTo(NOON_EPOCH_S + 6 * 3600);
    }

    @Test
    void aTunnelThatStaysAsItIsIsUsual() {
        assertThat(daily(days(40, 99, 1), 40).standing()).isEqualTo(new LossStanding.Usual());
    }

    @Test
    void aSlippedCoverIsToldWithItsNight() {
        LossWatch watch = daily(days(28, 20, 1.25), 28);
        LossChange change = ((LossStanding.Changed) watch.standing()).change();
        assertThat(25.0).isBetween(change.leastPercent(), change.mostPercent());
        long duskEpochS = NOON_EPOCH_S + 20 * 86_400 + 6 * 3600;
        assertThat(change.sinceEpochS()).isBetween(duskEpochS - 86_400, duskEpochS + 86_400);
    }

    @Test
    void daysThatNobodyLookedAtAreLookedAtLater() {
        List<Stretch> all = days(28, 20, 1.25);
        LossWatch late = LossWatch.NEW.after(learned, until(14, all)).after(learned, all);
        LossChange change = ((LossStanding.Changed) late.standing()).change();
        LossChange daily = ((LossStanding.Changed) daily(all, 28).standing()).change();
        assertThat(change.sinceEpochS()).isEqualTo(daily.sinceEpochS());
        assertThat(change.percent()).isCloseTo(daily.percent(), within(0.1)); // a text has so many decimals
    }

    @Test
    void lookingTwiceChangesNothing() {
        LossWatch once = daily(days(20, 99, 1), 20);
        assertThat(once.after(learned, days(20, 99, 1))).isEqualTo(once);
    }

    @Test
    void aNightThatIsNotOverWaits() {
        List<Stretch> all = days(20, 99, 1);
        int midnight = 12 * DAY_QUARTERS + 48;
        List<Stretch> part =
                List.of(new Stretch(NOON_EPOCH_S, all.get(0).quarters().subList(0, midnight)));
        LossWatch watch = LossWatch.NEW.after(learned, until(12, all));
        assertThat(watch.after(learned, part)).isEqualTo(watch);
    }

    @Test
    void withoutALearnedTunnelNothingIsSaid() {
        LossWatch watch = LossWatch.NEW.after(new Lesson.TooFew(3, 5), days(20, 99, 1));
        assertThat(watch.standing()).isEqualTo(LossStanding.UNKNOWN);
        assertThat(LossWatch.NEW.after(learned, days(6, 99, 1)).standing()).isEqualTo(LossStanding.UNKNOWN);
    }

    @Test
    void nightsWithoutHeatSayNothing() {
        List<Stretch> warm = new ArrayList<>();
        for (Stretch stretch : days(14, 99, 1)) {
            warm.add(new Stretch(
                    stretch.startEpochS(),
                    stretch.quarters().stream()
                            .map(q -> new Stretch.Quarter(q.airC(), q.airC(), NOTHING, NOTHING, q.dark(), true))
                            .toList()));
        }
        assertThat(LossWatch.NEW.after(learned, warm).standing()).isEqualTo(LossStanding.UNKNOWN);
    }

    @Test
    void textIsReadBack() {
        assertThat(LossWatch.parse(LossWatch.NEW.toText())).isEqualTo(LossWatch.NEW);
        LossWatch watch = daily(days(24, 20, 1.25), 24);
        assertThat(LossWatch.parse(watch.toText())).isEqualTo(watch);
        for (String damaged : List.of("", "heat-loss 2\n", watch.toText() + "1 2\n", "heat-loss 1\n1 2 3\n")) {
            assertThatThrownBy(() -> LossWatch.parse(damaged)).isInstanceOf(IllegalArgumentException.class);
        }
    }
}
