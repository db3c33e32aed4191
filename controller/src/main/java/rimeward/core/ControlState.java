package rimeward.core;

import rimeward.core.decision.ControlLaw;
import rimeward.core.decision.LawState;
import rimeward.core.guard.GuardState;
import rimeward.core.guard.StandDowns;
import rimeward.core.judgement.JudgeState;
import rimeward.core.reading.Tick;
import rimeward.core.watch.WatchState;
import rimeward.site.Site;

/**
 * All that control remembers from one tick to the next.
 *
 * @param pulse when the last tick was
 * @param assumedOutsideC outside temperature to assume when none is seen: the coldest of late, °C
 */
public record ControlState(
        Pulse pulse, JudgeState judge, WatchState watch, LawState law, GuardState guard, double assumedOutsideC) {

    /** Before the first tick, with nothing known of the past. */
    public static ControlState start(Site site, ControlLaw law, double assumedOutsideC) {
        return new ControlState(
                Pulse.start(),
                JudgeState.start(site),
                WatchState.start(site),
                law.start(site),
                GuardState.start(site),
                assumedOutsideC);
    }

    /**
     * With a machine standing down for service.
     *
     * @param forS from this tick on, s; 0 brings it back
     */
    public ControlState withStandDown(int machine, double forS, Tick now) {
        double fromLastTickS = forS > 0 ? forS + pulse.sinceS(now) : 0; // the step that comes takes that time off again
        StandDowns others =
                guard.standDowns().with(machine, fromLastTickS, guard.clocks().size());
        return new ControlState(pulse, judge, watch, law, guard.with(others), assumedOutsideC);
    }

    /**
     * After a power cut: every relay fell open, and what the sensors said before it is too old to compare with. Habits and failures
     * are remembered.
     */
    public ControlState afterOutage(Site site) {
        return new ControlState(
                pulse,
                judge.afterOutage(),
                WatchState.resume(site, watch.failures()),
                law,
                guard.withAllOpen(),
                assumedOutsideC);
    }
}
