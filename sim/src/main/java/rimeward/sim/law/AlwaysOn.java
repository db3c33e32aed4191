package rimeward.sim.law;

import rimeward.core.decision.ControlLaw;
import rimeward.core.decision.Decision;
import rimeward.core.decision.LawState;
import rimeward.core.decision.Situation;
import rimeward.site.Site;

/** The heater plugged in for the winter: its own dial decides. */
public final class AlwaysOn implements ControlLaw {
    @Override
    public String name() {
        return "always-on";
    }

    @Override
    public LawState start(Site site) {
        return LawState.NOTHING;
    }

    @Override
    public Decision decide(Situation now, LawState state) {
        return Plain.wish(now.site(), now.site().heaterStages(), state);
    }
}
