package rimeward.core.decision;

import rimeward.core.judgement.Damp;
import rimeward.core.judgement.Inside;
import rimeward.core.judgement.Outside;
import rimeward.site.Site;
import rimeward.site.Targets;

/**
 * The dry duty: whether the air, the coldest bench or the film is too near to wet. All three are averaged, because they swing
 * with every run of the heater, and a dryer that follows the swings never gets warm.
 *
 * @param known whether there is an average yet; until then the numbers mean nothing
 * @param rhPercent wettest relative humidity, averaged, %
 * @param benchSpreadK coldest bench above the dew point, averaged, K
 * @param filmSpreadK film above the dew point, averaged, K; far above where outside is not seen
 */
record DryDuty(boolean known, boolean needed, double rhPercent, double benchSpreadK, double filmSpreadK) {
    static final DryDuty START = new DryDuty(false, false, 0, 0, 0);

    /** Time constant of the averages, s: longer than the heater's runs. Own choice. */
    private static final double AVERAGE_S = 900;

    /** Once needed, the dew-point spreads must be regained with this to spare, K. Own choice. */
    private static final double SPREAD_HYSTERESIS_K = 0.5;

    private static final double UNSEEN_FILM_K = 100;

    DryDuty after(Site site, Inside.Seen inside, Damp.Seen damp, Outside outside, double dtS) {
        double share = known ? dtS / (AVERAGE_S + dtS) : 1;
        double rh = rhPercent + (damp.wettestRhPercent() - rhPercent) * share;
        double bench = benchSpreadK + (inside.coldestC() - damp.dewPointC() - benchSpreadK) * share;
        double film = filmSpreadK + (filmSpreadK(site, inside, damp, outside) - filmSpreadK) * share;
        return new DryDuty(true, isNeeded(site.targets(), rh, bench, film), rh, bench, film);
    }

    private boolean isNeeded(Targets targets, double rh, double bench, double film) {
        double hysteresisK = needed ? SPREAD_HYSTERESIS_K : 0;
        return rh >= (needed ? targets.dryOffPercent() : targets.dryOnPercent())
                || bench < targets.benchDewSpreadK() + hysteresisK
                || film < targets.filmDewSpreadK() + hysteresisK;
    }

    /** The film lies between inside and outside, as far as its insulation puts it. */
    private static double filmSpreadK(Site site, Inside.Seen inside, Damp.Seen damp, Outside outside) {
        return outside instanceof Outside.Seen seen
                ? seen.airC() + site.tunnel().filmFraction() * (inside.middleC() - seen.airC()) - damp.dewPointC()
                : UNSEEN_FILM_K;
    }

    Reason reason(Targets targets) {
        if (!needed) {
            return rhPercent <= targets.dryOffPercent()
                    ? new Reason(Cause.DRY_ENOUGH, rhPercent, targets.dryOffPercent())
                    : new Reason(Cause.DRY_RESTING, rhPercent, targets.dryOnPercent());
        }
        if (rhPercent >= targets.dryOnPercent()) {
            return new Reason(Cause.DAMP, rhPercent, targets.dryOnPercent());
        }
        if (benchSpreadK < targets.benchDewSpreadK()) {
            return new Reason(Cause.BENCH_NEAR_DEW, benchSpreadK, targets.benchDewSpreadK());
        }
        if (filmSpreadK < targets.filmDewSpreadK()) {
            return new Reason(Cause.FILM_NEAR_DEW, filmSpreadK, targets.filmDewSpreadK());
        }
        return rhPercent >= targets.dryOffPercent()
                ? new Reason(Cause.DRYING, rhPercent, targets.dryOffPercent())
                : notYetClear(targets);
    }

    /** Dry by its humidity, but a spread has not been regained with enough to spare. */
    private Reason notYetClear(Targets targets) {
        double benchLimitK = targets.benchDewSpreadK() + SPREAD_HYSTERESIS_K;
        return benchSpreadK < benchLimitK
                ? new Reason(Cause.BENCH_NEAR_DEW, benchSpreadK, benchLimitK)
                : new Reason(Cause.FILM_NEAR_DEW, filmSpreadK, targets.filmDewSpreadK() + SPREAD_HYSTERESIS_K);
    }
}
