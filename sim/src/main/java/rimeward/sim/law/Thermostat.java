package rimeward.sim.law;

import rimeward.core.decision.ControlLaw;
import rimeward.core.decision.Decision;
import rimeward.core.decision.LawState;
import rimeward.core.decision.Situation;
import rimeward.core.judgement.Inside;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/**
 * A plain plug-in air thermostat in the middle of the tunnel: the whole heater on 1 K above the floor, off 2 K higher (common
 * practice, no source). It knows nothing of the cold corner, of falling fast, of damp, and leaves the dryer in the shed. Where
 * no temperature is known it stays as it is.
 */
public final class Thermostat implements ControlLaw {
    private static final double ON_ABOVE_FLOOR_K = 1;
    private static final double DIFFERENTIAL_K = 2;

    private record Heating(boolean on) implements LawState {}

    private static final Heating ON = new Heating(true);
    private static final Heating OFF = new Heating(false);

    @Override
    public String name() {
        return "thermostat";
    }

    @Override
    public LawState start(Site site) {
        return OFF;
    }

    @Override
    public Decision decide(Situation now, LawState state) {
        Heating next = heating(now, (Heating) state);
        Site site = now.site();
        return Plain.wish(site, next.on() ? site.heaterStages() : RelaySet.none(), next);
    }

    private static Heating heating(Situation now, Heating was) {
        if (!(now.judgement().inside() instanceof Inside.Seen inside)) {
            return was;
        }
        double onC = now.site().floorC() + ON_ABOVE_FLOOR_K;
        if (inside.middleC() <= onC) {
            return ON;
        }
        return inside.middleC() >= onC + DIFFERENTIAL_K ? OFF : was;
    }
}
