package rimeward.core.decision;

import rimeward.core.judgement.Damp;
import rimeward.core.judgement.Inside;
import rimeward.core.judgement.Judgement;
import rimeward.core.judgement.Outside;
import rimeward.site.Site;
import rimeward.site.Targets;

/** The dry duty: whether the air, the coldest bench or the film is too near to wet. */
final class DryDuty {
    /** Once needed, the dew-point spreads must be regained with this to spare, K. Own choice. */
    private static final double SPREAD_HYSTERESIS_K = 0.5;

    private final Site site;
    private final Targets targets;

    DryDuty(Site site) {
        this.site = site;
        targets = site.targets();
    }

    boolean needed(Inside.Seen inside, Damp.Seen damp, Outside outside, boolean was) {
        double hysteresisK = was ? SPREAD_HYSTERESIS_K : 0;
        return damp.wettestRhPercent() >= (was ? targets.dryOffPercent() : targets.dryOnPercent())
                || inside.coldestC() - damp.dewPointC() < targets.benchDewSpreadK() + hysteresisK
                || (outside instanceof Outside.Seen seen
                        && filmC(inside, seen) - damp.dewPointC() < targets.filmDewSpreadK() + hysteresisK);
    }

    /** The film lies between inside and outside, as far as its insulation puts it. */
    private double filmC(Inside.Seen inside, Outside.Seen outside) {
        return outside.airC() + site.tunnel().filmFraction() * (inside.middleC() - outside.airC());
    }

    Reason reason(Judgement judgement, boolean needed) {
        if (!(judgement.damp() instanceof Damp.Seen damp) || !(judgement.inside() instanceof Inside.Seen inside)) {
            return Reason.of(Cause.NOT_ASKED);
        }
        double rhPercent = damp.wettestRhPercent();
        if (!needed) {
            return rhPercent <= targets.dryOffPercent()
                    ? new Reason(Cause.DRY_ENOUGH, rhPercent, targets.dryOffPercent())
                    : new Reason(Cause.DRY_RESTING, rhPercent, targets.dryOnPercent());
        }
        if (rhPercent >= targets.dryOnPercent()) {
            return new Reason(Cause.DAMP, rhPercent, targets.dryOnPercent());
        }
        double benchSpreadK = inside.coldestC() - damp.dewPointC();
        if (benchSpreadK < targets.benchDewSpreadK()) {
            return new Reason(Cause.BENCH_NEAR_DEW, benchSpreadK, targets.benchDewSpreadK());
        }
        if (judgement.outside() instanceof Outside.Seen outside
                && filmC(inside, outside) - damp.dewPointC() < targets.filmDewSpreadK()) {
            return new Reason(Cause.FILM_NEAR_DEW, filmC(inside, outside) - damp.dewPointC(), targets.filmDewSpreadK());
        }
        return new Reason(Cause.DRYING, rhPercent, targets.dryOffPercent());
    }
}
