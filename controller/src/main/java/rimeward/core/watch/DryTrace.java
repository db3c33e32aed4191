package rimeward.core.watch;

import rimeward.core.judgement.Damp;
import rimeward.site.Targets;

/**
 * Drying by its effect: within an hour of being asked, a sound dryer lowers the dew point or the relative humidity, unless
 * the air was dry already. Whether it runs is not asked: one that stops by itself in damp air does not dry either.
 *
 * @param askedS how long it has been asked, s
 * @param startDewPointC dew point when that began, °C
 * @param startRhPercent relative humidity when that began, %
 * @param idles whether a meter showed it to stand still though asked
 * @param notDrying whether the last hour that can be judged was in vain
 * @param unaskedS how long it has not been asked, s; counted only while {@code notDrying}
 */
record DryTrace(
        double askedS,
        double startDewPointC,
        double startRhPercent,
        boolean idles,
        boolean notDrying,
        double unaskedS) {
    static final DryTrace IDLE = new DryTrace(0, 0, 0, false, false, 0);

    private static final double WINDOW_S = 3600;
    private static final double LEAST_DEW_K = 0.3;
    private static final double LEAST_RH_PERCENT = 2;

    /** Not asked for so long, somebody may have mended it, s. Own choice. */
    private static final double FORGOTTEN_S = 7200;

    DryTrace after(Damp damp, Targets targets, boolean asked, boolean nowIdles, double dtS) {
        if (!asked) {
            return resting(unaskedS + dtS);
        }
        if (!(damp instanceof Damp.Seen seen)) {
            return resting(unaskedS);
        }
        boolean dry = seen.wettestRhPercent() <= targets.dryOffPercent();
        if (askedS == 0 || (nowIdles && !idles)) { // what it dried before it stopped says nothing of now
            return new DryTrace(dtS, seen.dewPointC(), seen.wettestRhPercent(), nowIdles, notDrying && !dry, 0);
        }
        double nowS = askedS + dtS;
        boolean judged = nowS >= WINDOW_S && askedS < WINDOW_S;
        boolean vain = judged ? inVain(seen, targets) : notDrying && !dry;
        return new DryTrace(nowS, startDewPointC, startRhPercent, nowIdles, vain, 0);
    }

    private DryTrace resting(double restedS) {
        return resting(notDrying, restedS);
    }

    /** Not asked for so long. */
    static DryTrace resting(boolean notDrying, double restedS) {
        return notDrying && restedS < FORGOTTEN_S ? new DryTrace(0, 0, 0, false, true, restedS) : IDLE;
    }

    private boolean inVain(Damp.Seen seen, Targets targets) {
        return seen.wettestRhPercent() >= targets.dryOnPercent()
                && startDewPointC - seen.dewPointC() < LEAST_DEW_K
                && startRhPercent - seen.wettestRhPercent() < LEAST_RH_PERCENT;
    }

    /** True at the tick that ends an hour in vain. */
    boolean hourInVain(double dtS) {
        return notDrying && askedS >= WINDOW_S && askedS - dtS < WINDOW_S;
    }
}
