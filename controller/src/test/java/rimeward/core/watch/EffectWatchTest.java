package rimeward.core.watch;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rimeward.core.judgement.Judge;
import rimeward.core.judgement.JudgeState;
import rimeward.core.judgement.Judged;
import rimeward.core.reading.Reading;
import rimeward.core.reading.Signal;
import rimeward.core.tunnel.TunnelModel;
import rimeward.fixture.Frames;
import rimeward.fixture.Sites;
import rimeward.site.RelaySet;
import rimeward.site.Site;

class EffectWatchTest {
    private static final RelaySet NONE = RelaySet.none();
    private static final RelaySet STAGE_1 = NONE.with(Sites.STAGE_1);
    private static final RelaySet DRYER = NONE.with(Sites.DRYER);

    private Site site = Sites.metered();
    private Frames frames = Frames.steady(8, 80);
    private Judge judge = new Judge(site);
    private EffectWatch watch = new EffectWatch(site);
    private JudgeState judgeState = JudgeState.start(site);
    private WatchState state = WatchState.start(site);
    private Deliveries last = new Deliveries(Collections.nCopies(4, Delivery.OFF), NONE, NONE, false);

    /** The air as a one-node tunnel in which heat arrives or does not. */
    private double liftK;

    private double driftK;

    /** Machines that stand down. */
    private RelaySet down = NONE;

    private void unmetered() {
        site = Sites.unmetered();
        judge = new Judge(site);
        watch = new EffectWatch(site);
        for (int i = 0; i < 4; i++) {
            frames.power(i, Reading.NOT_FITTED);
        }
    }

    private Deliveries pass(RelaySet closed, double seconds) {
        var frame = frames.after(seconds);
        Judged judged = judge.judge(judgeState, frame, seconds);
        judgeState = judged.next();
        Watched watched = watch.watch(
                state, judged.judgement(), frame.senses().powersW(), closed, down, TunnelModel.assumed(site), seconds);
        state = watched.next();
        last = watched.deliveries();
        return last;
    }

    /** Runs with the air following what truly arrives; the outside drifts down half a kelvin an hour. */
    private void run(RelaySet closed, double arrivingW, double minutes) {
        TunnelModel tunnel = TunnelModel.assumed(site);
        for (int i = 0; i < minutes * 12; i++) {
            double aimK = arrivingW * tunnel.quickLiftKPerW();
            liftK += (aimK - liftK) * (1 - StrictMath.exp(-5 / tunnel.airTimeConstantS()));
            driftK -= 0.5 * 5 / 3600;
            frames.inside(8 + driftK + liftK);
            pass(closed, 5);
        }
    }

    @Test
    void aMeterTellsAtOnceWhatAMachineDoes() {
        assertThat(pass(STAGE_1, 5).of(Sites.STAGE_1)).isEqualTo(Delivery.STARTING);
        frames.power(Sites.STAGE_1, Frames.value(980));
        assertThat(pass(STAGE_1, 5).of(Sites.STAGE_1)).isEqualTo(Delivery.GIVING);
        frames.power(Sites.STAGE_1, Frames.value(0));
        assertThat(pass(STAGE_1, 5).of(Sites.STAGE_1)).isEqualTo(Delivery.STARTING);
        assertThat(pass(STAGE_1, 10).of(Sites.STAGE_1)).isEqualTo(Delivery.NOT_GIVING);
        assertThat(last.failed()).isEqualTo(STAGE_1);
    }

    @Test
    void aDryerWhoseFanAloneRunsGivesNothing() {
        frames.power(Sites.DRYER, Frames.value(600));
        pass(DRYER, 5);
        frames.power(Sites.DRYER, Frames.value(40));
        pass(DRYER, 5);
        assertThat(pass(DRYER, 20).of(Sites.DRYER)).isEqualTo(Delivery.NOT_GIVING);
        assertThat(last.failed()).as("a satisfied dryer has not failed").isEqualTo(NONE);
    }

    @Test
    void anOldOrImpossiblePowerIsNoPower() {
        frames.power(Sites.DRYER, new Reading.Value(600, 60));
        assertThat(pass(DRYER, 30).of(Sites.DRYER)).isEqualTo(Delivery.GIVING);
        for (Reading unsound : List.of(
                new Reading.Value(600, 61), Frames.value(Double.NaN), Frames.value(-600), Frames.value(65_535))) {
            frames.power(Sites.DRYER, unsound);
            assertThat(pass(DRYER, 30).of(Sites.DRYER)).as(unsound.toString()).isEqualTo(Delivery.UNSEEN);
        }
    }

    @Test
    void powerThroughAnOpenRelayIsAWeldedOne() {
        frames.power(Sites.STAGE_1, Frames.value(990));
        pass(STAGE_1, 5);
        assertThat(pass(NONE, 5).of(Sites.STAGE_1)).as("the meter may lag").isEqualTo(Delivery.OFF);
        assertThat(pass(NONE, 20).of(Sites.STAGE_1)).isEqualTo(Delivery.STUCK_ON);
    }

    @Test
    void aFailedStageCountsAsFailedUntilItIsSeenToGive() {
        pass(STAGE_1, 30);
        pass(STAGE_1, 30);
        assertThat(pass(NONE, 1700).failedLately()).isEqualTo(STAGE_1);
        assertThat(pass(NONE, 200).failedLately()).as("worth a try").isEqualTo(NONE);
        assertThat(pass(NONE, 90_000).failed()).as("but nobody saw it mended").isEqualTo(STAGE_1);
        frames.power(Sites.STAGE_1, Frames.value(990));
        assertThat(pass(STAGE_1, 5).failed()).isEqualTo(NONE);
    }

    @Test
    void whereNoMeterCanShowItMendedAFailureIsForgottenAfterTwoHours() {
        pass(STAGE_1, 30);
        assertThat(pass(STAGE_1, 30).failed()).isEqualTo(STAGE_1);
        frames.power(Sites.STAGE_1, Reading.NO_ANSWER);
        assertThat(pass(NONE, 7100).failed()).isEqualTo(STAGE_1);
        frames.jitter(0.01); // else the air would be taken to be unseen
        assertThat(pass(NONE, 200).failed()).isEqualTo(NONE);
    }

    @Test
    void whileBlindAFailureThatNobodyCanSeeMendedIsNotForgotten() {
        pass(STAGE_1, 30);
        assertThat(pass(STAGE_1, 30).failed()).isEqualTo(STAGE_1);
        frames.power(Sites.STAGE_1, Reading.NO_ANSWER);
        for (int sensor = 0; sensor < 3; sensor++) {
            frames.air(sensor, Reading.NO_ANSWER);
        }
        assertThat(pass(STAGE_1, 20_000).failed()).isEqualTo(STAGE_1);
    }

    @Test
    void withoutAMeterHeatThatArrivesIsNotDoubted() {
        unmetered();
        run(NONE, 0, 120);
        for (int cycle = 0; cycle < 10; cycle++) {
            run(STAGE_1, 1000, 10);
            assertThat(last.of(Sites.STAGE_1)).isEqualTo(Delivery.UNSEEN);
            run(NONE, 0, 20);
            assertThat(last.of(Sites.STAGE_1)).isEqualTo(Delivery.OFF);
        }
        assertThat(last.failed()).isEqualTo(NONE);
    }

    @Test
    void aTunnelThatWentColdForWantOfHeatDoesNotAccuseTheHeatItGetsNow() {
        unmetered();
        run(STAGE_1, 1000, 60);
        for (int i = 0; i < 40; i++) {
            driftK -= 0.1; // 3 K in an hour: far more than weather does
            run(NONE, 0, 2);
        }
        run(STAGE_1, 1000, 30);
        assertThat(last.of(Sites.STAGE_1)).isEqualTo(Delivery.UNSEEN);
        assertThat(last.failed()).isEqualTo(NONE);
    }

    @Test
    void withoutAMeterHeatThatNeverArrivesIsMissedWithinAQuarterOfAnHour() {
        unmetered();
        run(NONE, 0, 120);
        run(STAGE_1, 0, 15);
        assertThat(last.of(Sites.STAGE_1)).isEqualTo(Delivery.NOT_GIVING);
    }

    @Test
    void withoutAMeterAFuseThatBlowsInMidRunIsMissedToo() {
        unmetered();
        run(NONE, 0, 60);
        run(STAGE_1, 1000, 60);
        assertThat(last.of(Sites.STAGE_1)).isEqualTo(Delivery.UNSEEN);
        run(STAGE_1, 0, 20);
        assertThat(last.of(Sites.STAGE_1)).isEqualTo(Delivery.NOT_GIVING);
    }

    @Test
    void withoutAMeterABlownFuseIsMissedThoughTheDryerHasBeenCalledMeanwhile() {
        unmetered();
        run(NONE, 0, 60);
        run(STAGE_1, 1000, 120);
        run(STAGE_1.with(Sites.STAGE_2), 0, 3);
        run(STAGE_1.with(Sites.STAGE_2).or(DRYER), 600, 30);
        assertThat(last.of(Sites.STAGE_1)).isEqualTo(Delivery.NOT_GIVING);
    }

    @Test
    void withoutAMeterAnIdleDryerIsNotHeldAgainstTheHeater() {
        unmetered();
        run(NONE, 0, 60);
        run(DRYER, 0, 25);
        assertThat(last.of(Sites.DRYER)).as("its humidistat is satisfied").isEqualTo(Delivery.NOT_GIVING);
        for (int minute = 0; minute < 60; minute++) {
            run(STAGE_1.or(DRYER), 1000, 1);
            assertThat(last.failed()).as("minute %d", minute).isEqualTo(NONE);
        }
    }

    @Test
    void withoutAMeterHeatThatStaysAfterSwitchingOffIsSuspected() {
        unmetered();
        run(NONE, 0, 60);
        run(STAGE_1, 1000, 40);
        run(NONE, 1000, 100);
        assertThat(last.of(Sites.STAGE_1)).isEqualTo(Delivery.STUCK_ON);
        assertThat(last.of(Sites.STAGE_2)).as("it never ran").isEqualTo(Delivery.OFF);
        assertThat(last.of(Sites.DRYER)).isEqualTo(Delivery.OFF);
        run(NONE, 0, 40);
        assertThat(last.of(Sites.STAGE_1)).as("it has let go after all").isEqualTo(Delivery.OFF);
    }

    @Test
    void aMachineThatStandsDownIsNotSuspectedByTheAirButByItsMeter() {
        unmetered();
        run(NONE, 0, 60);
        run(STAGE_1, 1000, 40);
        down = STAGE_1;
        run(NONE, 1000, 100); // whoever works on it may have brought a heater
        assertThat(last.of(Sites.STAGE_1)).isEqualTo(Delivery.OFF);
        frames.power(Sites.STAGE_1, Frames.value(980));
        assertThat(pass(NONE, 5).of(Sites.STAGE_1)).as("hands may be inside").isEqualTo(Delivery.STUCK_ON);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 3, 6, 9, 14})
    void withoutAMeterTheMorningSunIsNoWeldedRelay(double risesKPerH) {
        unmetered();
        run(NONE, 0, 60);
        run(STAGE_1, 1000, 40);
        for (int minute = 0; minute < 240; minute++) {
            driftK += risesKPerH / 60 * StrictMath.max(0, 1 - minute / 200.0); // slower towards noon
            run(NONE, 0, 1);
            assertThat(last.of(Sites.STAGE_1)).as("minute %d", minute).isEqualTo(Delivery.OFF);
        }
    }

    @Test
    void aLostMeterIsReplacedByTheAir() {
        frames.power(Sites.STAGE_1, Reading.NO_ANSWER);
        run(NONE, 0, 120);
        run(STAGE_1, 0, 15);
        assertThat(last.of(Sites.STAGE_1)).isEqualTo(Delivery.NOT_GIVING);
    }

    @Test
    void anOpenDoorExplainsMissingHeat() {
        unmetered();
        run(NONE, 0, 120);
        frames.door(Signal.ON);
        run(STAGE_1, 0, 30);
        assertThat(last.of(Sites.STAGE_1)).isEqualTo(Delivery.UNSEEN);
    }

    @Test
    void theColdThatAnOpenDoorLeavesBehindIsNoMissingHeat() {
        unmetered();
        run(NONE, 0, 60);
        run(STAGE_1, 1000, 40);
        frames.door(Signal.ON);
        driftK -= 6;
        run(STAGE_1, 1000, 20);
        frames.door(Signal.OFF);
        for (int minute = 0; minute < 30; minute++) {
            driftK += 0.2;
            run(STAGE_1, 1000, 1);
            assertThat(last.of(Sites.STAGE_1)).isEqualTo(Delivery.UNSEEN);
        }
    }

    @Test
    void anHourOfDryingInVainIsToldOnce() {
        frames.power(Sites.DRYER, Frames.value(600));
        frames = Frames.steady(8, 92).power(Sites.DRYER, Frames.value(600));
        int told = 0;
        for (int minute = 0; minute < 120; minute++) {
            told += pass(DRYER, 60).dryerInVain() ? 1 : 0;
        }
        assertThat(told).isEqualTo(1);
    }

    @Test
    void aDryerThatDriesIsNotSuspected() {
        frames = Frames.steady(8, 95).power(Sites.DRYER, Frames.value(600));
        for (int minute = 0; minute < 120; minute++) {
            for (int sensor = 0; sensor < 3; sensor++) {
                frames.rh(sensor, Frames.value(95 - minute * 0.1));
            }
            assertThat(pass(DRYER, 60).dryerNotDrying()).isFalse();
        }
    }

    /** Asked for so many minutes in air that stays damp, or does not. */
    private int hoursInVain(RelaySet closed, int minutes, double rhPercent) {
        int told = 0;
        for (int minute = 0; minute < minutes; minute++) {
            frames.jitter(0.01 * (minute % 2));
            for (int sensor = 0; sensor < 3; sensor++) {
                frames.rh(sensor, Frames.value(rhPercent));
            }
            told += pass(closed, 60).dryerInVain() ? 1 : 0;
        }
        return told;
    }

    @Test
    void aDryerThatStopsByItselfInDampAirDoesNotDry() {
        frames.power(Sites.DRYER, Frames.value(40)); // its fan alone
        assertThat(hoursInVain(DRYER, 70, 92)).isEqualTo(1);
        assertThat(last.dryerNotDrying()).isTrue();
    }

    @Test
    void aDryerThatStopsLaterThanInItsFirstHourIsNoticedToo() {
        frames.power(Sites.DRYER, Frames.value(600));
        hoursInVain(DRYER, 20, 92);
        hoursInVain(DRYER, 100, 85);
        assertThat(last.dryerNotDrying()).isFalse();
        frames.power(Sites.DRYER, Frames.value(0)); // its coil has frozen
        assertThat(hoursInVain(DRYER, 70, 86)).isEqualTo(1);
    }

    @Test
    void aDryerThatItsOwnHumidistatStopsInDryAirIsSound() {
        frames.power(Sites.DRYER, Frames.value(40));
        assertThat(hoursInVain(DRYER, 200, 72)).isZero();
    }

    @Test
    void aDryerThatDidNotDryIsDoubtedUntilItDriesOrHasNotBeenAskedForTwoHours() {
        hoursInVain(DRYER, 70, 92);
        hoursInVain(NONE, 30, 92);
        assertThat(last.dryerNotDrying()).as("it only rests").isTrue();
        hoursInVain(DRYER, 70, 85);
        assertThat(last.dryerNotDrying()).as("as damp as when it began").isTrue();
        hoursInVain(NONE, 5, 85);
        hoursInVain(DRYER, 10, 85);
        hoursInVain(DRYER, 55, 82);
        assertThat(last.dryerNotDrying()).as("3 % drier").isFalse();

        hoursInVain(NONE, 5, 92);
        hoursInVain(DRYER, 70, 92);
        hoursInVain(NONE, 119, 92);
        assertThat(last.dryerNotDrying()).isTrue();
        hoursInVain(NONE, 2, 92);
        assertThat(last.dryerNotDrying()).isFalse();
    }
}
