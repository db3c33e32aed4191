package rimeward.core.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import rimeward.core.judgement.Damp;
import rimeward.core.judgement.Inside;
import rimeward.core.judgement.Judgement;
import rimeward.core.judgement.Outside;
import rimeward.core.outlook.Outlook;
import rimeward.core.tunnel.TunnelModel;
import rimeward.fixture.Beliefs;
import rimeward.fixture.Sites;
import rimeward.site.Drying;
import rimeward.site.RelaySet;
import rimeward.site.Site;

class DutyLawTest {
    private static final RelaySet NONE = RelaySet.none();
    private static final RelaySet STAGE_1 = NONE.with(Sites.STAGE_1);
    private static final RelaySet STAGES = STAGE_1.with(Sites.STAGE_2);
    private static final RelaySet DRYER = NONE.with(Sites.DRYER);
    private static final RelaySet VENT = NONE.with(Sites.VENT);

    private Site site = Sites.metered();
    private final DutyLaw law = new DutyLaw();
    private LawState state = law.start(site);
    private Outlook outlook = Outlook.NONE;

    private Decision decide(Judgement judgement, double dtS) {
        Situation now = new Situation(site, dtS, judgement, outlook, TunnelModel.assumed(site), NONE, Beliefs.allOff());
        Decision decision = law.decide(now, state);
        assertThat(law.decide(now, state)).as("pure").isEqualTo(decision);
        state = decision.next();
        return decision;
    }

    private static Judgement air(double coldestC, double slopeKPerS, double rhPercent, double dewPointC) {
        return Beliefs.of(
                Beliefs.seen(coldestC, slopeKPerS), Beliefs.damp(rhPercent, dewPointC), Beliefs.outside(-6, 0.002));
    }

    @Test
    void theHeaterComesAtTheLowerLimitAndGoesAtTheUpper() {
        Decision on = decide(frost(4.6, 0, -2), 5);
        assertThat(on.wish()).isEqualTo(STAGE_1);
        assertThat(on.reasons().get(Sites.STAGE_1)).isEqualTo(new Reason(Cause.COLD, 4.6, 4.7));
        Decision holds = decide(frost(5.2, 1e-3, -2), 5);
        assertThat(holds.wish()).isEqualTo(STAGE_1);
        assertThat(holds.reasons().get(Sites.STAGE_1)).isEqualTo(new Reason(Cause.HOLDING, 5.2, 5.7));
        Decision off = decide(frost(5.7, 1e-3, -2), 5);
        assertThat(off.wish()).isEqualTo(NONE);
        assertThat(off.reasons().get(Sites.STAGE_1)).isEqualTo(new Reason(Cause.WARM_ENOUGH, 5.7, 5.7));
        Decision rests = decide(frost(5.2, 0, -2), 5);
        assertThat(rests.reasons().get(Sites.STAGE_1)).isEqualTo(new Reason(Cause.RESTING, 5.2, 4.7));
    }

    @Test
    void aFastFallStartsHeatBeforeTheLimitAndSaysSo() {
        Decision on = decide(frost(5.5, -0.01, -2), 5);
        assertThat(on.wish()).isEqualTo(STAGE_1);
        Reason why = on.reasons().get(Sites.STAGE_1);
        assertThat(why.cause()).isEqualTo(Cause.COLD_SOON);
        assertThat(why.measured()).isLessThan(4.7);
        assertThat(why.sentence())
                .isEqualTo("the coldest bench would be at 4.1 °C by the time heat is felt, at or below 4.7 °C");
    }

    private static Judgement frost(double coldestC, double slopeKPerS, double outsideC) {
        return Beliefs.of(Beliefs.seen(coldestC, slopeKPerS), Beliefs.damp(50, -5), Beliefs.outside(outsideC, 0.002));
    }

    @Test
    void theSecondStageJoinsWhenTheFirstHasHadItsTimeAndTheFallGoesOn() {
        assertThat(decide(frost(4.6, -2e-4, -2), 5).wish()).isEqualTo(STAGE_1);
        assertThat(decide(frost(4.5, -1e-3, -2), 60).wish())
                .as("the first has not had time to be felt")
                .isEqualTo(STAGE_1);
        Decision joins = decide(frost(4.4, -1e-3, -2), 60);
        assertThat(joins.wish()).isEqualTo(STAGES);
        assertThat(joins.reasons().get(Sites.STAGE_2)).isEqualTo(new Reason(Cause.NOT_ENOUGH, 4.4, 4.7));
    }

    @Test
    void aFirstStageThatTurnsTheFallIsLeftAlone() {
        decide(frost(4.6, -2e-4, -2), 5);
        assertThat(decide(frost(4.5, 2e-4, -2), 130).wish()).isEqualTo(STAGE_1);
    }

    @Test
    void inHardFrostItBeginsWithAsManyStagesAsTheTunnelModelSays() {
        assertThat(decide(frost(4.6, -2e-4, -9), 5).wish()).isEqualTo(STAGES);
    }

    @Test
    void whenEveryStageIsNotEnoughTheDryersHeatIsCalled() {
        decide(frost(4.6, -2e-4, -9), 5);
        Decision joins = decide(frost(4.4, -2e-4, -9), 130);
        assertThat(joins.wish()).isEqualTo(STAGES.or(DRYER));
        assertThat(joins.reasons().get(Sites.DRYER).cause()).isEqualTo(Cause.NOT_ENOUGH);
    }

    @Test
    void stagesLeaveOneAtATimeAndTheOneThatIsNeededAllTheTimeStays() {
        decide(frost(4.6, -2e-4, -9), 5);
        Decision fewer = decide(frost(5.8, 1e-3, -9), 60);
        assertThat(fewer.wish()).isEqualTo(STAGE_1);
        assertThat(fewer.reasons().get(Sites.STAGE_2)).isEqualTo(new Reason(Cause.ENOUGH_WITHOUT, 5.8, 4.7));
        assertThat(decide(frost(6.2, 1e-4, -9), 600).wish())
                .as("the model wants it")
                .isEqualTo(STAGE_1);
        assertThat(decide(frost(6.8, 1e-4, -9), 600).wish())
                .as("a kelvin above the band the air knows better than the model")
                .isEqualTo(NONE);
    }

    private static final double LONG_S = 1e6; // long enough for any average to be where the reading is

    @Test
    void theDryerKeepsTheHumidityBand() {
        assertThat(decide(air(12, 0, 79, 2), 5).wish()).isEqualTo(NONE);
        Decision on = decide(air(12, 0, 81, 2), LONG_S);
        assertThat(on.wish()).isEqualTo(DRYER);
        assertThat(on.reasons().get(Sites.DRYER).sentence())
                .isEqualTo("relative humidity, on average 81 %, is at or above 80 %");
        assertThat(decide(air(12, 0, 71, 2), LONG_S).wish()).isEqualTo(DRYER);
        Decision off = decide(air(12, 0, 69, 2), LONG_S);
        assertThat(off.wish()).isEqualTo(NONE);
        assertThat(off.reasons().get(Sites.DRYER).cause()).isEqualTo(Cause.DRY_ENOUGH);
    }

    @Test
    void swingsOfHumidityWithEachRunOfTheHeaterDoNotStartTheDryer() {
        for (int i = 0; i < 200; i++) {
            assertThat(decide(air(12, 0, i % 2 == 0 ? 70 : 86, 2), 240).wish()).isEqualTo(NONE);
        }
    }

    @Test
    void aBenchNearTheDewPointCallsTheDryer() {
        Decision near = decide(overcast(11.2), 5);
        assertThat(near.wish()).isEqualTo(DRYER);
        assertThat(near.reasons().get(Sites.DRYER).cause()).isEqualTo(Cause.BENCH_NEAR_DEW);
        assertThat(decide(overcast(10.6), LONG_S).wish())
                .as("with half a kelvin to spare")
                .isEqualTo(DRYER);
        assertThat(decide(overcast(10.4), LONG_S).wish()).isEqualTo(NONE);
    }

    private static Judgement overcast(double dewPointC) {
        return Beliefs.of(Beliefs.seen(12, 0), Beliefs.damp(60, dewPointC), Beliefs.outside(11, 0.008));
    }

    @Test
    void aFilmFarBelowTheDewPointCallsTheDryer() {
        Inside.Seen inside = Beliefs.seen(8, 0);
        Judgement wetFilm = Beliefs.of(inside, Beliefs.damp(60, 6), Beliefs.outside(-8, 0.002));
        Decision decision = decide(wetFilm, 5);
        assertThat(decision.wish()).isEqualTo(DRYER);
        assertThat(decision.reasons().get(Sites.DRYER).cause()).isEqualTo(Cause.FILM_NEAR_DEW);
    }

    private static Judgement damp(double rhPercent, double outsideC) {
        return Beliefs.of(Beliefs.seen(5.4, 0), Beliefs.damp(rhPercent, -3), Beliefs.outside(outsideC, 0.002));
    }

    @Test
    void onDampNightsItDriesWhileItIsColdAndTheHeaterStandsReady() {
        Decision decision = decide(damp(76, 1), 5);
        assertThat(decision.wish()).isEqualTo(DRYER);
        assertThat(decision.reasons().get(Sites.DRYER)).isEqualTo(new Reason(Cause.DRIES_WHILE_COLD, 76, 75));
    }

    @Test
    void inLessDampAirItWarmsOnlyWhereThatTakesLessThroughTheNight() {
        assertThat(decide(damp(72, 0), 5).wish())
                .as("572 W by the heater: the dryer would lift the air higher")
                .isEqualTo(NONE);
        outlook = new Outlook.Night(1, -3, 1, 20_000);
        Decision colderNight = decide(damp(72, 0), 5);
        assertThat(colderNight.wish()).isEqualTo(DRYER);
        Reason why = colderNight.reasons().get(Sites.DRYER);
        assertThat(why.cause()).isEqualTo(Cause.WARM_BY_DRYER);
        assertThat(why.measured()).isCloseTo(600, within(1e-9));
        assertThat(why.limit()).isCloseTo(737, within(1e-9));
    }

    @Test
    void whenItIsTooColdForTheDryersHeatItIsNotAskedToWarm() {
        assertThat(decide(damp(76, -9), 5).wish()).isEqualTo(NONE);
    }

    @Test
    void whereNoHeatIsWantedItWaitsUntilItMustDry() {
        assertThat(decide(damp(76, 6), 5).wish()).isEqualTo(NONE);
    }

    @Test
    void anotherChoiceDriesTheSame() {
        DutyLaw heaterWarms = new DutyLaw(heat -> false);
        LawState start = heaterWarms.start(site);
        Situation cold =
                new Situation(site, 5, damp(76, 0), outlook, TunnelModel.assumed(site), NONE, Beliefs.allOff());
        assertThat(heaterWarms.decide(cold, start).wish()).isEqualTo(NONE);
        Situation wet = new Situation(site, 5, damp(81, 0), outlook, TunnelModel.assumed(site), NONE, Beliefs.allOff());
        assertThat(heaterWarms.decide(wet, start).wish()).isEqualTo(DRYER);
    }

    @Test
    void dryAirGivesTheDryerNoLatentHeatSoTheHeaterHolds() {
        Judgement dry = Beliefs.of(Beliefs.seen(4.6, 0), Beliefs.damp(60, -3), Beliefs.outside(1, 0.003));
        assertThat(decide(dry, 5).wish()).isEqualTo(STAGE_1);
    }

    @Test
    void withoutHumidityTheDryerRunsByTheClock() {
        int minutes = 0;
        for (int i = 0; i < 180; i++) {
            Decision decision = decide(Beliefs.of(Beliefs.seen(8, 0), Damp.UNSEEN, Outside.UNSEEN), 60);
            minutes += decision.wish().has(Sites.DRYER) ? 1 : 0;
            assertThat(decision.reasons().get(Sites.DRYER).cause()).isEqualTo(Cause.DRY_BY_TIMER);
        }
        assertThat(minutes).isEqualTo(60);
    }

    @Test
    void drierOutsideAirIsLetInInsteadOfDrying() {
        Judgement day = Beliefs.of(Beliefs.seen(9, 0), Beliefs.damp(90, 7), Beliefs.outside(10, 0.0040));
        Decision decision = decide(day, 5);
        assertThat(decision.wish()).isEqualTo(VENT);
        assertThat(decision.reasons().get(Sites.VENT)).isEqualTo(new Reason(Cause.AIRING, 4, 5));
        Judgement cold = Beliefs.of(Beliefs.seen(9, 0), Beliefs.damp(90, 7), Beliefs.outside(3, 0.0030));
        assertThat(decide(cold, 5).wish())
                .as("not when it would chill the plants")
                .isEqualTo(DRYER);
    }

    @Test
    void anOpenDoorSparesTheDryer() {
        Decision decision = decide(Beliefs.doorOpen(air(12, 0, 90, 10)), 5);
        assertThat(decision.wish()).isEqualTo(NONE);
        assertThat(decision.reasons().get(Sites.DRYER).cause()).isEqualTo(Cause.DOOR_OPEN);
    }

    @Test
    void blindItWishesNothingAndLeavesTheFloorToTheGuard() {
        Judgement blind = Beliefs.of(new Inside.Unseen(5, false), Damp.UNSEEN, Outside.UNSEEN);
        assertThat(decide(blind, 5).wish()).isEqualTo(NONE);
    }

    @Test
    void byTheClockTheDryerCollectsNoMoreThanATankThatIsEmptiedOnceADay() {
        Drying.Dryer usual = (Drying.Dryer) site.drying();
        Drying.Dryer small = new Drying.Dryer(
                usual.machine(), usual.kind(), usual.fanW(), usual.runOnS(), usual.minimumAirC(), 0.5, 2, false);
        site = Sites.of(site.heater(), small, site.venting(), site.circuit());
        int minutes = 0;
        String why = "";
        for (int i = 0; i < 24 * 60; i++) {
            Decision decision = decide(Beliefs.of(Beliefs.seen(8, 0), Damp.UNSEEN, Outside.UNSEEN), 60);
            minutes += decision.wish().has(Sites.DRYER) ? 1 : 0;
            why = decision.reasons().get(Sites.DRYER).sentence();
        }
        assertThat(minutes / 60.0 * 0.5).as("litres of a 2-litre tank").isBetween(1.2, 2.0);
        assertThat(why).isEqualTo("humidity is not known, so the dryer runs 20 of every 150 minutes");
    }

    @Test
    void stagesThatBeginTogetherDoNotSayThatOneBeforeWasNotEnough() {
        Decision both = decide(frost(4.9, -2e-3, -9), 5);
        assertThat(both.wish()).isEqualTo(STAGES);
        assertThat(both.reasons().get(Sites.STAGE_2).cause()).isEqualTo(Cause.COLD_SOON);
    }

    @Test
    void aStageThatDoesNotJoinSaysWhetherItWaitsOrIsNotNeeded() {
        decide(frost(4.6, -2e-4, -2), 5);
        assertThat(decide(frost(4.5, -1e-3, -2), 60)
                        .reasons()
                        .get(Sites.STAGE_2)
                        .cause())
                .isEqualTo(Cause.NOT_FELT_YET);
        assertThat(decide(frost(4.4, 1e-3, -2), 10).reasons().get(Sites.STAGE_2).cause())
                .isEqualTo(Cause.LIFTED);
        assertThat(decide(frost(5.2, 1e-4, -2), 10).reasons().get(Sites.STAGE_2))
                .isEqualTo(new Reason(Cause.ENOUGH_WITHOUT, 5.2, 4.7));
    }

    @Test
    void aDryerThatADewPointKeepsRunningDoesNotSpeakOfHumidity() {
        decide(overcast(11.2), 5);
        assertThat(decide(overcast(10.6), LONG_S).reasons().get(Sites.DRYER))
                .as("60 % is far below where humidity would stop it")
                .satisfies(why -> assertThat(why.cause()).isEqualTo(Cause.BENCH_NEAR_DEW))
                .satisfies(why -> assertThat(why.measured()).isLessThan(why.limit()));
    }
}
