package rimeward.core;

import rimeward.core.decision.LawState;
import rimeward.core.guard.GuardState;
import rimeward.core.judgement.JudgeState;
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

    /** After a power cut: every relay fell open, and what the sensors said before it is too old to compare with. */
    ControlState afterOutage(Site site) {
        return new ControlState(
                pulse, JudgeState.start(site), WatchState.start(site), law, guard.withAllOpen(), assumedOutsideC);
    }
}
