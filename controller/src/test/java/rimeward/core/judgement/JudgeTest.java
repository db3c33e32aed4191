package rimeward.core.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rimeward.air.MoistAir;
import rimeward.air.RelativeHumidity;
import rimeward.core.reading.Loss;
import rimeward.core.reading.Reading;
import rimeward.core.reading.Signal;
import rimeward.fixture.Frames;
import rimeward.fixture.Sites;
import rimeward.site.Site;

class JudgeTest {
    private static final int CORNER = 0;
    private static final int MIDDLE = 1;
    private static final int DOOR = 2;

    private final Site site = Sites.metered();
    private final Judge judge = new Judge(site);
    private Frames frames = Frames.steady(6, 80);
    private JudgeState state = JudgeState.start(site);
    private Judgement last;

    @BeforeEach
    void settle() {
        last = pass(5);
    }

    private Judgement pass(double seconds) {
        Judged judged = judge.judge(state, frames.after(seconds), seconds);
        state = judged.next();
        last = judged.judgement();
        return last;
    }

    private Inside.Seen seen() {
        return (Inside.Seen) last.inside();
    }

    private Verdict air(int sensor) {
        return last.airVerdicts().get(sensor);
    }

    @Test
    void theColdestIsTheLowestReadingLessItsUncertainty() {
        frames.air(CORNER, Frames.value(4.6)).air(DOOR, Frames.value(7));
        pass(5);
        assertThat(seen().coldestC()).isCloseTo(4.4, within(1e-9));
        assertThat(seen().coldestSensor()).isEqualTo(CORNER);
        assertThat(seen().hottestC()).isEqualTo(7);
        assertThat(seen().middleC()).isCloseTo((4.6 + 6 + 7) / 3, within(1e-9));
        assertThat(last.trust()).isEqualTo(Trust.FULL);
    }

    @Test
    void theSlopeFollowsASteadyFall() {
        for (int i = 1; i <= 360; i++) {
            frames.inside(6 - i * 5 * 0.001);
            pass(5);
        }
        assertThat(seen().benches())
                .allSatisfy(bench -> assertThat(bench.slopeKPerS()).isCloseTo(-0.001, within(5e-5)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-45, 61, 127.937, Double.NaN, Double.NEGATIVE_INFINITY})
    void whatNoTunnelCanBeIsNotBelieved(double airC) {
        frames.air(CORNER, Frames.value(airC));
        pass(5);
        assertThat(air(CORNER)).isEqualTo(Verdict.OUT_OF_RANGE);
        assertThat(seen().coldestC()).isCloseTo(5.8, within(1e-9));
        assertThat(last.trust()).isEqualTo(Trust.REDUCED);
    }

    @Test
    void oldAndLostReadingsAreNotBelieved() {
        frames.air(CORNER, new Reading.Value(6, 61)).air(MIDDLE, new Reading.Lost(Loss.BAD_CHECKSUM));
        pass(5);
        assertThat(air(CORNER)).isEqualTo(Verdict.TOO_OLD);
        assertThat(air(MIDDLE)).isEqualTo(Verdict.LOST);
        assertThat(air(DOOR)).isEqualTo(Verdict.TRUSTED);
    }

    @Test
    void aJumpIsDoubtedForTenMinutes() {
        frames.air(CORNER, Frames.value(9));
        pass(5);
        assertThat(air(CORNER)).isEqualTo(Verdict.TOO_FAST);
        pass(590);
        assertThat(air(CORNER)).isEqualTo(Verdict.TOO_FAST);
        pass(10);
        assertThat(air(CORNER)).isEqualTo(Verdict.TRUSTED);
    }

    @Test
    void noiseAtAFastTickIsNoJump() {
        for (int i = 0; i < 20; i++) {
            frames.air(CORNER, Frames.value(6 + (i % 2) * 0.3));
            pass(1);
            assertThat(air(CORNER)).isEqualTo(Verdict.TRUSTED);
        }
    }

    @Test
    void aReadingThatStandsStillWhileTheOthersMoveIsFrozen() {
        for (int i = 1; i <= 60; i++) {
            frames.air(MIDDLE, Frames.value(6 - i * 0.05)).air(DOOR, Frames.value(6 - i * 0.05));
            pass(30);
        }
        assertThat(air(CORNER)).isEqualTo(Verdict.FROZEN);
        assertThat(seen().coldestC())
                .as("the frozen one no longer hides the cold")
                .isCloseTo(2.8, within(1e-6));
        frames.air(CORNER, Frames.value(5.9));
        pass(5);
        assertThat(air(CORNER)).as("believed again once it moves").isEqualTo(Verdict.TRUSTED);
    }

    @Test
    void inStillAirStandingStillIsNoFault() {
        for (int i = 0; i < 100; i++) {
            pass(60);
        }
        assertThat(air(CORNER)).isEqualTo(Verdict.TRUSTED);
        for (int i = 0; i < 30; i++) {
            pass(60);
        }
        assertThat(air(CORNER)).as("but not for ever").isEqualTo(Verdict.FROZEN);
    }

    @Test
    void ofThreeTheOneFarFromTheMiddleIsNotBelieved() {
        frames = Frames.steady(6, 80).air(CORNER, Frames.value(12));
        state = JudgeState.start(site);
        pass(5);
        assertThat(air(CORNER)).isEqualTo(Verdict.DISAGREES);
        assertThat(seen().hottestC()).isEqualTo(6);
    }

    @Test
    void ofTwoNeitherCanBeSingledOut() {
        frames = Frames.steady(6, 80).air(CORNER, Frames.value(12)).air(DOOR, Reading.NO_ANSWER);
        state = JudgeState.start(site);
        pass(5);
        assertThat(air(CORNER)).isEqualTo(Verdict.AT_ODDS);
        assertThat(air(MIDDLE)).isEqualTo(Verdict.AT_ODDS);
        assertThat(seen().coldestC()).as("the colder counts for the floor").isCloseTo(5.8, within(1e-9));
        assertThat(seen().hottestC()).as("the warmer for the hot limit").isEqualTo(12);
    }

    @Test
    void withoutAnyInsideTemperatureItIsBlindAndCountsHowLong() {
        frames.air(CORNER, Reading.NO_ANSWER).air(MIDDLE, Reading.NO_ANSWER).air(DOOR, Reading.NO_ANSWER);
        pass(5);
        pass(5);
        assertThat(last.trust()).isEqualTo(Trust.BLIND);
        assertThat(last.inside()).isEqualTo(new Inside.Unseen(10, false));
        frames.air(DOOR, Frames.value(5));
        assertThat(pass(5).inside()).isInstanceOf(Inside.Seen.class);
    }

    @Test
    void blindAReadingThatShotUpStillCountsForTheHotLimit() {
        frames.air(MIDDLE, Reading.NO_ANSWER).air(DOOR, Reading.NO_ANSWER).air(CORNER, Frames.value(40));
        pass(5);
        assertThat(last.inside()).isEqualTo(new Inside.Unseen(5, true));
    }

    @Test
    void moistureIsTheWettestBelievedSensors() {
        frames.rh(MIDDLE, Frames.value(90)).rh(DOOR, Frames.value(150));
        pass(5);
        Damp.Seen damp = (Damp.Seen) last.damp();
        double dewPointC = MoistAir.dewPointC(RelativeHumidity.vapourFromOverWaterPa(6, 90));
        assertThat(damp.wettestRhPercent()).isEqualTo(90);
        assertThat(damp.dewPointC()).isCloseTo(dewPointC, within(1e-9));
        assertThat(last.rhVerdicts().get(DOOR)).isEqualTo(Verdict.OUT_OF_RANGE);
    }

    @Test
    void aLittleAboveSaturationCountsAsSaturated() {
        frames.rh(CORNER, Frames.value(104));
        pass(5);
        assertThat(((Damp.Seen) last.damp()).wettestRhPercent()).isEqualTo(100);
    }

    @Test
    void humidityWithoutItsTemperatureSaysNothing() {
        frames.rh(MIDDLE, Reading.NO_ANSWER).rh(DOOR, Reading.NO_ANSWER).air(CORNER, Reading.NO_ANSWER);
        pass(5);
        assertThat(last.damp()).isEqualTo(Damp.UNSEEN);
        assertThat(last.inside()).isInstanceOf(Inside.Seen.class);
    }

    @Test
    void outsideIsSeenOrUnseen() {
        assertThat(((Outside.Seen) last.outside()).airC()).isZero();
        assertThat(((Outside.Seen) last.outside()).damp()).isInstanceOf(OutsideDamp.Seen.class);
        frames.air(3, Reading.NO_ANSWER);
        assertThat(pass(5).outside()).isEqualTo(Outside.UNSEEN);
    }

    @Test
    void contactsCountOnlyWhenTheySaySo() {
        frames.tank(Signal.ON).door(Signal.LOST);
        pass(5);
        assertThat(last.tankFull()).isTrue();
        assertThat(last.doorOpen()).isFalse();
    }

    /** Nights in which the corner is this much colder than the other two, a reading a minute. */
    private void nights(double hours, double colderK) {
        for (int i = 0; i < hours * 60; i++) {
            double airC = 6 + 0.01 * (i % 2);
            frames.inside(airC).air(CORNER, Frames.value(airC - colderK));
            pass(60);
        }
    }

    @Test
    void aColdCornerIsStillReckonedWithWhenItsSensorIsLost() {
        nights(24, 1.5);
        frames.inside(5).air(CORNER, Reading.NO_ANSWER);
        pass(60);
        assertThat(air(CORNER)).isEqualTo(Verdict.LOST);
        assertThat(seen().coldestC())
                .as("5 °C less most of 1.5 K, less the uncertainty")
                .isBetween(3.3, 3.8);
        assertThat(seen().coldestSensor()).isEqualTo(CORNER);
        assertThat(seen().middleC()).isEqualTo(5);
        state = state.afterOutage();
        pass(60);
        assertThat(seen().coldestC()).as("after a power cut too").isBetween(3.3, 3.8);
    }

    @Test
    void aCornerWhoseSensorLiesIsReckonedWithTheSameWay() {
        nights(48, 1.5);
        frames.inside(5).air(CORNER, Frames.value(15));
        pass(60);
        assertThat(air(CORNER)).isEqualTo(Verdict.TOO_FAST);
        assertThat(seen().coldestC()).isBetween(3.3, 3.5);
    }

    @Test
    void aLostBenchIsNeverTakenForWarmerThanTheOthersNorForMuchColder() {
        nights(240, -2);
        frames.inside(5).air(CORNER, Reading.NO_ANSWER);
        pass(60);
        assertThat(seen().coldestC()).as("the coldest that is seen").isCloseTo(4.8, within(1e-9));
        nights(480, 4.5);
        frames.inside(5).air(CORNER, Reading.NO_ANSWER);
        pass(60);
        assertThat(seen().coldestC())
                .as("3 K and the others' own habit at most")
                .isBetween(0.2, 2.0);
    }

    @Test
    void theSunByDayTeachesNothing() {
        for (int i = 0; i < 24 * 60; i++) {
            double airC = 20 + 0.01 * (i % 2);
            frames.inside(airC).air(CORNER, Frames.value(airC - 3));
            pass(60);
        }
        frames.inside(19).air(CORNER, Reading.NO_ANSWER);
        pass(60);
        assertThat(seen().coldestC()).isCloseTo(18.8, within(1e-9));
    }
}
