package rimeward.core.watch;

import rimeward.core.judgement.Damp;
import rimeward.site.Targets;

/**
 * Drying by its effect: within an hour of starting, a sound dryer lowers the dew point or the relative humidity, unless
 * the air was dry already.
 *
 * @param runS how long it has run, s
 * @param startDewPointC dew point when it started, °C
 * @param startRhPercent relative humidity when it started, %
 */
record DryTrace(double runS, double startDewPointC, double startRhPercent) {
    static final DryTrace IDLE = new DryTrace(0, 0, 0);

    private static final double WINDOW_S = 3600;
    private static final double LEAST_DEW_K = 0.3;
    private static final double LEAST_RH_PERCENT = 2;

    DryTrace after(Damp damp, boolean running, double dtS) {
        if (!running || !(damp instanceof Damp.Seen seen)) {
            return IDLE;
        }
        return runS == 0
                ? new DryTrace(dtS, seen.dewPointC(), seen.wettestRhPercent())
                : new DryTrace(runS + dtS, startDewPointC, startRhPercent);
    }

    /** True at the end of the first hour if nothing came of it. */
    boolean inVain(Damp damp, Targets targets, double dtS) {
        return damp instanceof Damp.Seen seen
                && runS >= WINDOW_S
                && runS - dtS < WINDOW_S
                && seen.wettestRhPercent() >= targets.dryOnPercent()
                && startDewPointC - seen.dewPointC() < LEAST_DEW_K
                && startRhPercent - seen.wettestRhPercent() < LEAST_RH_PERCENT;
    }
}
