package rimeward.core.decision;

import rimeward.core.judgement.Inside;
import rimeward.site.Site;

/**
 * The warm duty as our law sees it: whether it is needed, and how many heater stages it takes.
 *
 * @param stages heater stages asked for while it is needed
 * @param sinceStageS since that number last changed, s
 */
record WarmDuty(boolean needed, int stages, double sinceStageS) {
    static final WarmDuty START = new WarmDuty(false, 0, 0);

    /** If the fall leads below this share of the guard margin, the next stage joins. Own choice. */
    private static final double NEXT_STAGE_SHARE = 0.6;

    WarmDuty after(Site site, FloorBand band, Inside.Seen inside, double dtS) {
        double coldestC = inside.coldestC();
        if (!band.needed(coldestC, needed)) {
            return new WarmDuty(false, 0, 0);
        }
        if (stages == 0) {
            return new WarmDuty(true, 1, 0);
        }
        double sinceS = sinceStageS + dtS;
        if (sinceS < site.heater().deadTimeS()) {
            return new WarmDuty(true, stages, sinceS); // too early to see what the last change did
        }
        boolean falling = inside.slopeKPerS() < 0;
        double aheadC = coldestC + inside.slopeKPerS() * site.heater().deadTimeS();
        if (falling
                && aheadC <= nextStageC(site)
                && stages < site.heater().stages().size()) {
            return new WarmDuty(true, stages + 1, 0);
        }
        if (!falling && stages > 1 && coldestC >= fewerC(band)) {
            return new WarmDuty(true, stages - 1, 0);
        }
        return new WarmDuty(true, stages, sinceS);
    }

    static double nextStageC(Site site) {
        return site.floorC() + NEXT_STAGE_SHARE * site.targets().guardMarginK();
    }

    static double fewerC(FloorBand band) {
        return (band.onC() + band.offC()) / 2;
    }

    Reason reason(Site site, FloorBand band, Inside.Seen inside, int stage) {
        double coldestC = inside.coldestC();
        if (stage < stages) {
            if (stage > 0) {
                return new Reason(Cause.STILL_FALLING, coldestC, nextStageC(site));
            }
            return coldestC <= band.onC()
                    ? new Reason(Cause.COLD, coldestC, band.onC())
                    : new Reason(Cause.HOLDING, coldestC, band.offC());
        }
        if (needed) {
            return new Reason(Cause.STAGE_NOT_NEEDED, coldestC, nextStageC(site));
        }
        return coldestC >= band.offC()
                ? new Reason(Cause.WARM_ENOUGH, coldestC, band.offC())
                : new Reason(Cause.RESTING, coldestC, band.onC());
    }
}
