package rimeward.sim.law;

import rimeward.core.decision.ControlLaw;
import rimeward.core.decision.Decision;
import rimeward.core.decision.DutyLaw;
import rimeward.core.decision.LawState;
import rimeward.core.decision.Situation;
import rimeward.core.decision.WarmChoice;
import rimeward.site.Site;

/**
 * Our law but for one thing: who holds the warm duty is not weighed. The heater always does, or the dryer does whenever it can. For
 * judging what the weighing is worth.
 */
public final class FixedDuty implements ControlLaw {
    private final String name;
    private final DutyLaw law;

    private FixedDuty(String name, WarmChoice choice) {
        this.name = name;
        law = new DutyLaw(choice);
    }

    public static FixedDuty heaterWarms() {
        return new FixedDuty("heater-warms", heat -> false);
    }

    public static FixedDuty dryerWarms() {
        return new FixedDuty("dryer-warms", heat -> true);
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public LawState start(Site site) {
        return law.start(site);
    }

    @Override
    public String remembered(LawState state) {
        return law.remembered(state);
    }

    @Override
    public LawState resume(Site site, String remembered) {
        return law.resume(site, remembered);
    }

    @Override
    public Decision decide(Situation now, LawState state) {
        return law.decide(now, state);
    }
}
