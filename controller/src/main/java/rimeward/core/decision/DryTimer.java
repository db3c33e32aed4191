package rimeward.core.decision;

import rimeward.site.Drying;
import rimeward.site.Site;

/** Drying by the clock, while humidity is unknown: no more than a tank holds that is emptied once a day. */
final class DryTimer {
    /** So long it runs in each period, s. Common practice, no source. */
    static final double RUN_S = 1200;

    /** A period is never shorter, s. Common practice, no source. */
    private static final double LEAST_PERIOD_S = 3600;

    /** Share of the tank that may be filled by the clock: in warm damp air a dryer collects more than it is rated. Own choice. */
    private static final double TANK_SHARE = 0.8;

    private static final double DAY_H = 24;

    private DryTimer() {}

    static double periodS(Site site) {
        if (!(site.drying() instanceof Drying.Dryer dryer)) {
            return LEAST_PERIOD_S;
        }
        double runS = StrictMath.max(RUN_S, dryer.machine().minOnS());
        double mostShare = TANK_SHARE * dryer.tankL() / (dryer.collectionLPerH() * DAY_H);
        return StrictMath.max(LEAST_PERIOD_S, runS / mostShare);
    }
}
