package rimeward.core;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import rimeward.core.decision.Cause;
import rimeward.core.decision.ControlLaw;
import rimeward.core.decision.Decision;
import rimeward.core.decision.DutyLaw;
import rimeward.core.decision.LawState;
import rimeward.core.decision.Situation;
import rimeward.core.guard.Guarded;
import rimeward.core.guard.Holder;
import rimeward.core.outlook.Outlook;
import rimeward.core.reading.Reading;
import rimeward.fixture.Frames;
import rimeward.fixture.Sites;
import rimeward.site.RelaySet;
import rimeward.site.Site;

class ControlCycleTest {
    private final Site site = Sites.metered();
    private final Frames frames = Frames.steady(8, 60);

    /** A law that answers by one function. */
    private record Law(Function<Situation, Decision> answer) implements ControlLaw {
        @Override
        public String name() {
            return "test";
        }

        @Override
        public LawState start(Site site) {
            return LawState.NOTHING;
        }

        @Override
        public Decision decide(Situation now, LawState state) {
            return answer.apply(now);
        }
    }

    private Stepped coldTickUnder(ControlLaw law) {
        ControlCycle cycle = new ControlCycle(site, law);
        Stepped mild = cycle.step(cycle.start(), frames.after(5), Outlook.NONE);
        frames.inside(4.5);
        return cycle.step(mild.next(), frames.after(60), Outlook.NONE);
    }

    private void keepsTheFloorUnder(ControlLaw law) {
        Outcome outcome = coldTickUnder(law).outcome();
        assertThat(outcome.guarded().closed().has(Sites.STAGE_1)).isTrue();
        assertThat(outcome.guarded().holder()).isEqualTo(Holder.HEATER);
    }

    @Test
    void aLawThatThrowsIsReplacedByTheGuard() {
        Law law = new Law(now -> {
            throw new IllegalStateException("bug");
        });
        keepsTheFloorUnder(law);
        assertThat(coldTickUnder(law)
                        .outcome()
                        .decision()
                        .reasons()
                        .get(Sites.DRYER)
                        .cause())
                .isEqualTo(Cause.LAW_FAILED);
    }

    @Test
    void aLawThatRecursesForEverIsReplacedByTheGuard() {
        keepsTheFloorUnder(new Law(ControlCycleTest::forEver));
    }

    @SuppressWarnings("InfiniteRecursion")
    private static Decision forEver(Situation now) {
        return forEver(now);
    }

    @Test
    @SuppressWarnings("NullAway") // this law breaks its contract on purpose
    void aLawThatReturnsRubbishIsReplacedByTheGuard() {
        keepsTheFloorUnder(new Law(now -> null));
        keepsTheFloorUnder(new Law(now -> new Decision(RelaySet.none(), List.of(), LawState.NOTHING)));
        keepsTheFloorUnder(new Law(now -> new Decision(RelaySet.of(1 << 9), List.of(), LawState.NOTHING)));
    }

    @Test
    void sameInputsGiveTheSameOutcome() {
        ControlCycle cycle = new ControlCycle(site, new DutyLaw());
        ControlState state = cycle.start();
        var frame = frames.after(5);
        assertThat(cycle.step(state, frame, Outlook.NONE)).isEqualTo(cycle.step(state, frame, Outlook.NONE));
    }

    @Test
    void afterAPowerCutMachinesStartAgainOneAfterAnother() {
        ControlCycle cycle = new ControlCycle(site, new DutyLaw());
        frames.inside(4.1);
        ControlState state = cycle.start();
        for (int i = 0; i < 60; i++) {
            state = cycle.step(state, frames.after(5), Outlook.NONE).next();
        }
        assertThat(state.guard().closed().has(Sites.STAGE_1)).isTrue();
        frames.inside(1.5);
        Stepped back = cycle.step(state, frames.after(3600), Outlook.NONE);
        assertThat(back.outcome().guarded().closed()).isEqualTo(RelaySet.of(1));
        assertThat(back.outcome().judgement().airVerdicts().get(0).isTrusted())
                .as("a fall during the outage is no jump")
                .isTrue();
    }

    private ControlState ticks(ControlCycle cycle, ControlState was, int count, double everyS) {
        ControlState state = was;
        for (int i = 0; i < count; i++) {
            frames.jitter(0.01 * (i % 2));
            Stepped stepped = cycle.step(state, frames.after(everyS), Outlook.NONE);
            assertThat(stepped.outcome().outageS()).isZero();
            state = stepped.next();
        }
        return state;
    }

    @Test
    void aLoopThatGoesByTheMinuteAndIsALittleLateHasNoPowerCuts() {
        ControlCycle cycle = new ControlCycle(site, new DutyLaw());
        ControlState state = ticks(cycle, cycle.start(), 20, 60.2);
        assertThat(cycle.step(state, frames.after(130), Outlook.NONE).outcome().outageS())
                .as("but two missed minutes are one")
                .isEqualTo(130);
    }

    @Test
    void aDryerRestsAfterAPowerCutThatIsOverBeforeTheControllerIsBack() {
        frames.inside(12);
        for (int i = 0; i < 3; i++) {
            frames.rh(i, Frames.value(90));
        }
        ControlCycle cycle = new ControlCycle(site, new DutyLaw());
        ControlState state = ticks(cycle, cycle.start(), 100, 5);
        assertThat(state.guard().closed().has(Sites.DRYER)).isTrue();
        Guarded back =
                cycle.step(state, frames.after(45), Outlook.NONE).outcome().guarded();
        assertThat(back.closed().has(Sites.DRYER)).isFalse();
        assertThat(back.reasons().get(Sites.DRYER).cause()).isEqualTo(Cause.MIN_REST);
    }

    @Test
    void aClockThatStandsStillOrRunsBackHarmsNothing() {
        ControlCycle cycle = new ControlCycle(site, new DutyLaw());
        Stepped first = cycle.step(cycle.start(), frames.after(5), Outlook.NONE);
        Stepped again = cycle.step(first.next(), frames.after(0), Outlook.NONE);
        Stepped back = cycle.step(again.next(), frames.after(-5), Outlook.NONE);
        assertThat(back.outcome().guarded().closed()).isEqualTo(RelaySet.none());
    }

    @Test
    void blindItHeatsByTheOutsideSensorElseTheForecastElseTheColdOfLate() {
        for (int i = 0; i < 3; i++) {
            frames.air(i, Reading.NO_ANSWER);
        }
        frames.outside(12);
        ControlCycle cycle = new ControlCycle(site, new DutyLaw());
        Stepped mild = cycle.step(cycle.start(), frames.after(5), Outlook.NONE);
        assertThat(mild.outcome().guarded().holder()).as("12 °C outside").isEqualTo(Holder.NOT_NEEDED);

        frames.air(3, Reading.NO_ANSWER);
        Outlook warmNight = new Outlook.Night(1, 11, 1, 3600);
        assertThat(cycle.step(mild.next(), frames.after(5), warmNight)
                        .outcome()
                        .guarded()
                        .holder())
                .as("10 °C by the forecast less its spread")
                .isEqualTo(Holder.NOT_NEEDED);
        assertThat(cycle.step(mild.next(), frames.after(5), Outlook.NONE)
                        .outcome()
                        .guarded()
                        .holder())
                .as("the cold of late")
                .isEqualTo(Holder.HEATER);
    }
}
