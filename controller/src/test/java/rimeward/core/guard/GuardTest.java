package rimeward.core.guard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import rimeward.core.decision.Cause;
import rimeward.core.decision.Decision;
import rimeward.core.decision.LawState;
import rimeward.core.decision.Reason;
import rimeward.core.judgement.Damp;
import rimeward.core.judgement.Inside;
import rimeward.core.judgement.Judgement;
import rimeward.core.judgement.Outside;
import rimeward.core.tunnel.TunnelModel;
import rimeward.core.watch.Deliveries;
import rimeward.core.watch.Delivery;
import rimeward.fixture.Beliefs;
import rimeward.fixture.Sites;
import rimeward.site.RelaySet;
import rimeward.site.Site;

class GuardTest {
    private static final RelaySet NONE = RelaySet.none();
    private static final RelaySet STAGE_1 = NONE.with(Sites.STAGE_1);
    private static final RelaySet STAGES = STAGE_1.with(Sites.STAGE_2);
    private static final RelaySet DRYER = NONE.with(Sites.DRYER);

    private Site site = Sites.metered();
    private GuardState state = rested(NONE);

    private static GuardState rested(RelaySet closed) {
        return new GuardState(closed, Collections.nCopies(4, MachineClock.RESTED), false, false, false, 0, 3600, 0);
    }

    private Guarded step(RelaySet wish, Judgement judgement, Deliveries deliveries, double dtS) {
        Decision decision = new Decision(wish, Collections.nCopies(4, Reason.of(Cause.ASKED)), LawState.NOTHING);
        TunnelModel tunnel = TunnelModel.assumed(site);
        Guarded word = new Guard(site).step(state, decision, judgement, deliveries, tunnel, -8, dtS);
        state = word.next();
        return word;
    }

    private Guarded step(RelaySet wish, double coldestC) {
        return step(wish, Beliefs.calm(coldestC), Beliefs.allOff(), 5);
    }

    private static Cause cause(Guarded word, int machine) {
        return word.reasons().get(machine).cause();
    }

    @Test
    void aSoundWishInMildAirIsFollowed() {
        Guarded word = step(DRYER, 8);
        assertThat(word.closed()).isEqualTo(DRYER);
        assertThat(word.overruled()).isEqualTo(NONE);
        assertThat(word.holder()).isEqualTo(Holder.NOT_NEEDED);
        assertThat(cause(word, Sites.DRYER)).isEqualTo(Cause.ASKED);
    }

    @Test
    void whenTheDryerIsSeenToStopTheHeaterHoldsFromTheSameTick() {
        state = rested(DRYER);
        Judgement cold = Beliefs.calm(4.6);
        Guarded holding = step(DRYER, cold, Beliefs.deliveries(Delivery.OFF, Delivery.OFF, Delivery.GIVING), 5);
        assertThat(holding.holder()).isEqualTo(Holder.DRYER);
        assertThat(holding.closed()).isEqualTo(DRYER);

        Guarded after = step(DRYER, cold, Beliefs.deliveries(Delivery.OFF, Delivery.OFF, Delivery.NOT_GIVING), 5);
        assertThat(after.holder()).isEqualTo(Holder.HEATER);
        assertThat(after.closed().has(Sites.STAGE_1)).isTrue();
        assertThat(after.reasons().get(Sites.STAGE_1)).isEqualTo(new Reason(Cause.NO_GAP, 4.6, 5.7));
    }

    @Test
    void aDryerThatNobodySeesIsNotTrustedWithTheFloor() {
        state = rested(DRYER);
        Guarded word =
                step(DRYER, Beliefs.calm(4.6), Beliefs.deliveries(Delivery.OFF, Delivery.OFF, Delivery.UNSEEN), 5);
        assertThat(word.holder()).isEqualTo(Holder.HEATER);
        assertThat(word.closed()).isEqualTo(STAGE_1.or(DRYER));
    }

    @Test
    void aLawThatAsksForNothingStillKeepsTheFloor() {
        assertThat(step(NONE, 4.71).closed()).isEqualTo(NONE);
        assertThat(step(NONE, 4.7).closed()).isEqualTo(STAGE_1);
        for (int i = 0; i < 120; i++) {
            assertThat(step(NONE, 5.6).closed())
                    .as("held until the band's upper limit")
                    .isEqualTo(STAGE_1);
        }
        assertThat(step(NONE, 5.7).closed()).isEqualTo(NONE);
    }

    @Test
    void nearTheFloorAndFallingEveryStageRuns() {
        Judgement near = Beliefs.of(Beliefs.seen(4.2, -1e-5), Damp.UNSEEN, Outside.UNSEEN);
        step(NONE, near, Beliefs.allOff(), 5);
        step(NONE, near, Beliefs.allOff(), 5);
        Guarded word = step(NONE, near, Beliefs.allOff(), 5);
        assertThat(word.closed()).as("one after the other, ten seconds apart").isEqualTo(STAGES);
        assertThat(cause(word, Sites.STAGE_2)).isEqualTo(Cause.FLOOR_NEAR);
    }

    @Test
    void inTheColdTheDryerIsShedFirst() {
        site = Sites.limited(1700);
        state = rested(DRYER);
        Guarded word = step(
                STAGES.or(DRYER),
                Beliefs.calm(4.6),
                Beliefs.deliveries(Delivery.OFF, Delivery.OFF, Delivery.GIVING),
                60);
        assertThat(word.closed()).isEqualTo(STAGE_1);
        assertThat(word.reasons().get(Sites.DRYER)).isEqualTo(new Reason(Cause.OVERLOAD, 2600, 1700));
    }

    @Test
    void aMachineThatWillNotSwitchOffStillLoadsTheCircuit() {
        site = Sites.limited(1700);
        state = rested(NONE);
        Deliveries welded = Beliefs.deliveries(Delivery.OFF, Delivery.STUCK_ON, Delivery.OFF);
        assertThat(step(DRYER, Beliefs.calm(8), welded, 60).closed())
                .as("1000 W and 600 W")
                .isEqualTo(DRYER);
        Guarded word = step(DRYER.or(STAGE_1), Beliefs.calm(8), welded, 60);
        assertThat(word.closed()).as("1000 W more are too much").isEqualTo(DRYER);
        assertThat(word.reasons().get(Sites.STAGE_1)).isEqualTo(new Reason(Cause.OVERLOAD, 2600, 1700));
    }

    @Test
    void whereAWeldedStageLeavesNoRoomForAnotherItHoldsTheDutyItself() {
        site = Sites.limited(1700);
        state = rested(NONE);
        Deliveries welded = Beliefs.deliveries(Delivery.OFF, Delivery.STUCK_ON, Delivery.OFF);
        Guarded word = step(NONE, Beliefs.calm(4.6), welded, 60);
        assertThat(word.closed()).isEqualTo(NONE);
        assertThat(word.holder()).isEqualTo(Holder.HEATER);
    }

    @Test
    void withoutColdTheHeatersUpperStageIsShedFirst() {
        site = Sites.limited(1700);
        state = rested(DRYER.or(STAGE_1));
        Guarded word = step(STAGES.or(DRYER), 8);
        assertThat(word.closed()).isEqualTo(STAGE_1.or(DRYER));
    }

    @Test
    void machinesStartOneAfterAnotherTheHeaterFirst() {
        Guarded first = step(STAGES.or(DRYER), 4.6);
        assertThat(first.closed()).isEqualTo(STAGE_1);
        assertThat(cause(first, Sites.DRYER)).isEqualTo(Cause.STAGGER);
        assertThat(step(STAGES.or(DRYER), 4.6).closed()).isEqualTo(STAGE_1);
        assertThat(step(STAGES.or(DRYER), 4.6).closed()).isEqualTo(STAGES);
        step(STAGES.or(DRYER), 4.6);
        assertThat(step(STAGES.or(DRYER), 4.6).closed())
                .isEqualTo(STAGES.or(DRYER).minus(NONE));
    }

    @Test
    void aboveTheHotLimitNothingHeatsUntilItHasCooledClear() {
        state = rested(STAGE_1);
        Inside.Seen hot = new Inside.Seen(4.2, 16, 28, 0, 0);
        Guarded word = step(STAGES.or(DRYER), Beliefs.of(hot, Damp.UNSEEN, Outside.UNSEEN), Beliefs.allOff(), 5);
        assertThat(word.closed()).isEqualTo(NONE);
        assertThat(word.holder()).isEqualTo(Holder.BARRED);
        assertThat(word.reasons().get(Sites.STAGE_1)).isEqualTo(new Reason(Cause.TOO_HOT, 28, 28));

        Inside.Seen cooling = new Inside.Seen(4.2, 16, 27.1, 0, 0);
        assertThat(step(NONE, Beliefs.of(cooling, Damp.UNSEEN, Outside.UNSEEN), Beliefs.allOff(), 5)
                        .closed())
                .isEqualTo(NONE);
        Inside.Seen clear = new Inside.Seen(4.2, 16, 26.9, 0, 0);
        assertThat(step(NONE, Beliefs.of(clear, Damp.UNSEEN, Outside.UNSEEN), Beliefs.allOff(), 5)
                        .closed())
                .isEqualTo(STAGE_1);
    }

    @Test
    void theDryerRestsWhenItsTankIsFullWhenItIsTooColdAndAfterRunningInVain() {
        assertThat(cause(step(DRYER, Beliefs.tankFull(Beliefs.calm(8)), Beliefs.allOff(), 5), Sites.DRYER))
                .isEqualTo(Cause.TANK_FULL);
        Judgement freezing = Beliefs.calm(0.4);
        assertThat(cause(step(DRYER, freezing, Beliefs.allOff(), 5), Sites.DRYER))
                .isEqualTo(Cause.TOO_COLD_FOR_DRYER);
        assertThat(cause(step(DRYER, Beliefs.calm(1.4), Beliefs.allOff(), 5), Sites.DRYER))
                .as("locked until a kelvin clear")
                .isEqualTo(Cause.TOO_COLD_FOR_DRYER);
        step(NONE, 8);
        assertThat(step(DRYER, Beliefs.calm(8), Beliefs.allOff(), 300).closed()).isEqualTo(DRYER);

        Deliveries vain = new Deliveries(Beliefs.allOff().each(), NONE, NONE, true);
        Guarded rests = step(DRYER, Beliefs.calm(8), vain, 5);
        assertThat(cause(rests, Sites.DRYER)).isEqualTo(Cause.DRYER_RESTS);
        assertThat(step(DRYER, Beliefs.calm(8), Beliefs.allOff(), Guard.DRYER_REST_S - 5)
                        .closed())
                .isEqualTo(NONE);
        assertThat(step(DRYER, Beliefs.calm(8), Beliefs.allOff(), 5).closed()).isEqualTo(DRYER);
    }

    @Test
    void aHeaterThatGivesNothingCallsEveryOtherSource() {
        state = rested(STAGE_1);
        Deliveries lost = Beliefs.deliveries(Delivery.NOT_GIVING, Delivery.OFF, Delivery.OFF);
        step(STAGE_1, Beliefs.calm(4.6), lost, 5);
        step(STAGE_1, Beliefs.calm(4.6), lost, 10);
        Guarded word = step(STAGE_1, Beliefs.calm(4.6), lost, 10);
        assertThat(word.closed()).isEqualTo(STAGES.or(DRYER));
        assertThat(word.reasons().get(Sites.STAGE_2).sentence())
                .as("its own shortest run keeps it on by now")
                .contains("has run 20 s");
    }

    @Test
    void aFailedStageMakesRoomForTheDryerUnlessThatGivesNothingEither() {
        site = Sites.limited(1050);
        state = rested(DRYER);
        Deliveries dryerGives = Beliefs.deliveries(Delivery.OFF, Delivery.OFF, Delivery.GIVING);
        Deliveries neither = Beliefs.deliveries(Delivery.OFF, Delivery.OFF, Delivery.NOT_GIVING);
        assertThat(step(STAGE_1, Beliefs.calm(4.6), new Deliveries(dryerGives.each(), STAGES, STAGES, false), 60)
                        .closed())
                .isEqualTo(DRYER);
        assertThat(step(STAGE_1, Beliefs.calm(4.6), new Deliveries(neither.each(), STAGES, STAGES, false), 60)
                        .closed())
                .isEqualTo(STAGE_1);
    }

    @Test
    void aLockedDryerThatTheFloorWouldWantTellsOfItsLock() {
        state = rested(STAGE_1.or(DRYER));
        Deliveries lost = Beliefs.deliveries(Delivery.NOT_GIVING, Delivery.OFF, Delivery.GIVING);
        Guarded word = step(STAGE_1, Beliefs.calm(0.4), lost, 5);
        assertThat(word.closed().meets(DRYER)).isFalse();
        assertThat(cause(word, Sites.DRYER)).isEqualTo(Cause.TOO_COLD_FOR_DRYER);
    }

    @Test
    void blindTheHeaterRunsTheShareThatTheTunnelModelGives() {
        double dtS = 5;
        double onS = 0;
        Judgement blind = Beliefs.of(new Inside.Unseen(60, false), Damp.UNSEEN, Outside.UNSEEN);
        double neededW = 110 * (4 + 0.7 + BlindCycle.RESERVE_K + 8);
        for (double t = 0; t < 10 * BlindCycle.PERIOD_S; t += dtS) {
            RelaySet closed = step(NONE, blind, Beliefs.allOff(), dtS).closed();
            onS += closed.and(STAGES).size() * dtS;
        }
        assertThat(onS * 1000 / (10 * BlindCycle.PERIOD_S)).isCloseTo(neededW, within(0.02 * neededW));
    }

    /** How long each of the two stages was closed while blind, over so many periods, s. */
    private double[] blindRunsS(UnaryOperator<RelaySet> failed, int periods) {
        double dtS = 5;
        double[] onS = new double[2];
        Judgement blind = Beliefs.of(new Inside.Unseen(60, false), Damp.UNSEEN, Outside.UNSEEN);
        for (double t = 0; t < periods * BlindCycle.PERIOD_S; t += dtS) {
            RelaySet lost = failed.apply(state.closed());
            Deliveries seen = new Deliveries(Beliefs.allOff().each(), lost, lost, false);
            RelaySet closed = step(NONE, blind, seen, dtS).closed();
            onS[0] += closed.has(Sites.STAGE_1) ? dtS : 0;
            onS[1] += closed.has(Sites.STAGE_2) ? dtS : 0;
        }
        return onS;
    }

    @Test
    void blindAndWithTheFirstStageFailedTheSecondGivesTheHeat() {
        site = Sites.losing(70); // 70 W/K · 15.7 K: more than one stage
        double[] onS = blindRunsS(closed -> STAGE_1, 10);
        assertThat(onS[1]).isEqualTo(10 * BlindCycle.PERIOD_S);
        assertThat(onS[0])
                .as("tried with what is left, each time until it could start again")
                .isBetween(600.0, 2400.0);
    }

    @Test
    void blindAFailedStageThatIsNotNeededIsStillTriedInEachPeriod() {
        site = Sites.losing(40);
        double[] onS = blindRunsS(closed -> STAGE_1, 10);
        assertThat(onS[1]).isCloseTo(10 * BlindCycle.PERIOD_S * 0.628, within(100.0));
        assertThat(onS[0]).isBetween(600.0, 2400.0);
    }

    @Test
    void blindAndWithNobodyToSeeWhichStageIsDeadTheyTakeTurns() {
        site = Sites.losing(40);
        double[] onS = blindRunsS(closed -> NONE, 10);
        assertThat(onS[0]).isCloseTo(onS[1], within(100.0));
        assertThat(onS[0] + onS[1]).isCloseTo(10 * BlindCycle.PERIOD_S * 0.628, within(100.0));
    }

    @Test
    void blindAndSomethingHotNothingHeats() {
        Judgement blind = Beliefs.of(new Inside.Unseen(60, true), Damp.UNSEEN, Outside.UNSEEN);
        Guarded word = step(STAGES.or(DRYER), blind, Beliefs.allOff(), 5);
        assertThat(word.closed()).isEqualTo(NONE);
        assertThat(word.holder()).isEqualTo(Holder.BARRED);
    }

    @Test
    void afterAPowerCutMachinesAreOpenAndClocksCountOn() {
        step(STAGE_1, 4.6);
        GuardState after = state.withAllOpen();
        assertThat(after.closed()).isEqualTo(NONE);
        assertThat(after.clocks().get(Sites.STAGE_1).sinceSwitchS()).isZero();
        assertThat(after.needed()).isTrue();
    }

    @Test
    void atTheStartWithoutHistoryHeatMayRunAtOnceAndTheDryerRestsFirst() {
        state = GuardState.start(site);
        Guarded word = step(DRYER.or(STAGE_1), 4.6);
        assertThat(word.closed()).isEqualTo(STAGE_1);
        assertThat(cause(word, Sites.DRYER)).isEqualTo(Cause.MIN_REST);
    }

    @Test
    void aboveTheBandTheDryerHoldsTheDutyIfWithoutItTheBandWouldBeReachedWithinTheHour() {
        state = rested(DRYER);
        Deliveries giving = Beliefs.deliveries(Delivery.OFF, Delivery.OFF, Delivery.GIVING);
        assertThat(step(DRYER, Beliefs.calm(6), giving, 5).holder()).isEqualTo(Holder.DRYER);
        assertThat(step(DRYER, Beliefs.calm(20), giving, 5).holder()).isEqualTo(Holder.NOT_NEEDED);
        assertThat(step(DRYER, Beliefs.calm(6), Beliefs.allOff(), 5).holder())
                .as("running, but not seen to give")
                .isEqualTo(Holder.NOT_NEEDED);
    }

    @Test
    void heatThatTheGuardHoldsAboveTheBandSaysWhatIsTrueOfIt() {
        Judgement falling = Beliefs.of(Beliefs.seen(5.8, -4e-3), Damp.UNSEEN, Outside.UNSEEN);
        state = new GuardState(STAGE_1, state.clocks(), true, false, false, 0, 3600, 0);
        Reason latched = step(NONE, falling, Beliefs.allOff(), 5).reasons().get(Sites.STAGE_1);
        assertThat(latched.cause()).isEqualTo(Cause.NO_GAP_SOON);
        assertThat(latched.limit()).as("it will be below the upper limit").isEqualTo(5.7);
        assertThat(latched.measured()).isBetween(4.7, 5.7);
    }

    @Test
    void aStageThatRunsOnUntilItCouldStartAgainSaysSo() {
        step(STAGE_1, 8);
        Guarded word = step(NONE, Beliefs.calm(8), Beliefs.allOff(), 100);
        assertThat(word.closed()).isEqualTo(STAGE_1);
        assertThat(cause(word, Sites.STAGE_1)).isEqualTo(Cause.START_IN_HAND);
    }

    // ---- standing down for service

    private void standDown(int machine, double forS) {
        state = state.with(state.standDowns().with(machine, forS, 4));
    }

    @Test
    void whenAStageStandsDownTheNextTakesTheDutyInTheSameTick() {
        step(NONE, 4.6);
        assertThat(step(NONE, 4.6).closed()).isEqualTo(STAGE_1);
        standDown(Sites.STAGE_1, 600);
        Guarded word = step(STAGE_1, 4.6);
        assertThat(word.closed()).isEqualTo(NONE.with(Sites.STAGE_2));
        assertThat(word.holder()).isEqualTo(Holder.HEATER);
        assertThat(word.reasons().get(Sites.STAGE_1)).isEqualTo(new Reason(Cause.STANDS_DOWN, 10, 0));
    }

    @Test
    void whenTheWholeHeaterStandsDownTheDryerIsAskedEvenUnseen() {
        standDown(Sites.STAGE_1, 600);
        standDown(Sites.STAGE_2, 600);
        Deliveries unseen = Beliefs.deliveries(Delivery.OFF, Delivery.OFF, Delivery.UNSEEN);
        Guarded word = step(NONE, Beliefs.calm(4.6), unseen, 5);
        assertThat(word.closed()).isEqualTo(DRYER);
        assertThat(word.holder()).isEqualTo(Holder.DRYER);
    }

    @Test
    void belowTheFloorNothingThatStandsDownIsClosed() {
        for (int machine = 0; machine < 4; machine++) {
            standDown(machine, 600);
        }
        for (int i = 0; i < 119; i++) {
            Guarded word = step(RelaySet.of(15), 1);
            assertThat(word.closed()).isEqualTo(NONE);
            assertThat(word.holder()).isEqualTo(Holder.NOBODY);
        }
        assertThat(step(RelaySet.of(15), 1).closed()).as("its time is over").isEqualTo(STAGE_1);
        assertThat(step(RelaySet.of(15), 1).closed()).as("one starts at a time").isEqualTo(STAGE_1);
    }

    @Test
    void blindAStageThatStandsDownIsReplacedByTheOthers() {
        standDown(Sites.STAGE_1, 600);
        Judgement blind = Beliefs.of(new Inside.Unseen(60, false), Damp.UNSEEN, Outside.UNSEEN);
        Guarded word = step(NONE, blind, Beliefs.allOff(), 5);
        assertThat(word.closed()).isEqualTo(NONE.with(Sites.STAGE_2));
        standDown(Sites.STAGE_2, 600);
        word = step(NONE, blind, Beliefs.allOff(), 5);
        assertThat(word.closed()).isEqualTo(NONE);
        assertThat(word.holder()).isEqualTo(Holder.NOBODY);
    }

    @Test
    void aDryerThatComesBackStillRests() {
        state = rested(DRYER);
        standDown(Sites.DRYER, 60);
        Guarded word = step(DRYER, 8);
        for (int i = 0; i < 59; i++) {
            assertThat(word.closed()).isEqualTo(NONE);
            word = step(DRYER, 8);
        }
        assertThat(word.closed()).as("rested 295 s of 300").isEqualTo(NONE);
        assertThat(cause(word, Sites.DRYER)).isEqualTo(Cause.MIN_REST);
        step(DRYER, 8);
        assertThat(step(DRYER, 8).closed()).isEqualTo(DRYER);
    }
}
