package rimeward.sim.law;

import rimeward.core.decision.ControlLaw;
import rimeward.core.decision.Decision;
import rimeward.core.decision.LawState;
import rimeward.core.decision.Situation;
import rimeward.core.outlook.Outlook;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/**
 * A careful grower without Rimeward: each evening a look at the forecast, then for the whole night nothing, the dryer, or the
 * heater on its own dial; in the morning everything off. Above the first threshold the tunnel needs no machine, above the second the
 * dryer's few kelvins of lift should do (common practice, no source).
 */
public final class ByHand implements ControlLaw {
    private static final double NOTHING_ABOVE_FLOOR_K = 1;
    private static final double DRYER_ABOVE_FLOOR_K = -3;

    /** What was switched on this evening. */
    private record Evening(long night, RelaySet on) implements LawState {}

    private static final Evening DAY = new Evening(-1, RelaySet.none());

    @Override
    public String name() {
        return "by-hand";
    }

    @Override
    public LawState start(Site site) {
        return DAY;
    }

    @Override
    public Decision decide(Situation now, LawState state) {
        Evening next = evening(now, (Evening) state);
        return Plain.wish(now.site(), next.on(), next);
    }

    private static Evening evening(Situation now, Evening was) {
        if (!(now.outlook() instanceof Outlook.Night forecast)) {
            return DAY;
        }
        return forecast.night() == was.night()
                ? was
                : new Evening(forecast.night(), chosen(now.site(), forecast.lowestOutsideC()));
    }

    private static RelaySet chosen(Site site, double lowestC) {
        if (lowestC >= site.floorC() + NOTHING_ABOVE_FLOOR_K) {
            return RelaySet.none();
        }
        boolean dryerWillDo = lowestC >= site.floorC() + DRYER_ABOVE_FLOOR_K
                && !site.dryerRelay().isEmpty();
        return dryerWillDo ? site.dryerRelay() : site.heaterStages();
    }
}
