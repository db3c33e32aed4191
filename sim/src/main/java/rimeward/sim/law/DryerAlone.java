package rimeward.sim.law;

import rimeward.core.decision.ControlLaw;
import rimeward.core.decision.Decision;
import rimeward.core.decision.LawState;
import rimeward.core.decision.Situation;
import rimeward.site.Site;

/** The dryer switched on for the winter: its own humidistat, float and lock decide, and its heat is all there is. */
public final class DryerAlone implements ControlLaw {
    @Override
    public String name() {
        return "dryer-alone";
    }

    @Override
    public LawState start(Site site) {
        return LawState.NOTHING;
    }

    @Override
    public Decision decide(Situation now, LawState state) {
        return Plain.wish(now.site(), now.site().dryerRelay(), state);
    }
}
