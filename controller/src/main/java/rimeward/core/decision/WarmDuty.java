package rimeward.core.decision;

import rimeward.core.judgement.Inside;
import rimeward.site.Site;

/**
 * The warm duty as our law sees it: whether it is needed, and how many heater stages it takes.
 *
 * @param stages sources of heat asked for while it is needed: the heater's stages, then the dryer
 * @param sinceStageS since that number last changed, s
 */
record WarmDuty(boolean needed, int stages, double sinceStageS) {
    static final WarmDuty START = new WarmDuty(false, 0, 0);

    /** If the fall leads below this share of the guard margin, the next source of heat joins. Own choice. */
    private static final double NEXT_STAGE_SHARE = 0.6;

    WarmDuty after(Site site, FloorBand band, Inside.Seen inside, double dtS) {
        if (!band.needed(needed)) {
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
        if (falling && band.aheadC() <= nextStageC(site) && stages < most(site)) {
            return new WarmDuty(true, stages + 1, 0);
        }
        if (!falling && stages > 1 && band.aheadC() >= fewerC(band)) {
            return new WarmDuty(true, stages - 1, 0);
        }
        return new WarmDuty(true, stages, sinceS);
    }

    /** The heater's stages, and after them the dryer, whose heat counts when every stage is not enough. */
    private static int most(Site site) {
        return site.heater().stages().size() + site.dryerRelay().size();
    }

    boolean takesDryer(Site site) {
        return stages > site.heater().stages().size();
    }

    static double nextStageC(Site site) {
        return site.floorC() + NEXT_STAGE_SHARE * site.targets().guardMarginK();
    }

    private static double fewerC(FloorBand band) {
        return (band.onC() + band.offC()) / 2;
    }

    Reason reason(Site site, FloorBand band, int stage) {
        if (stage < stages) {
            return stage > 0 ? new Reason(Cause.STILL_FALLING, band.coldestC(), nextStageC(site)) : whyOn(band);
        }
        if (needed) {
            return new Reason(Cause.STAGE_NOT_NEEDED, band.coldestC(), nextStageC(site));
        }
        if (band.aheadC() < band.offC()) {
            return new Reason(Cause.RESTING, band.coldestC(), band.onC());
        }
        return band.coldestC() >= band.offC()
                ? new Reason(Cause.WARM_ENOUGH, band.coldestC(), band.offC())
                : new Reason(Cause.WARM_SOON, band.aheadC(), band.offC());
    }

    private static Reason whyOn(FloorBand band) {
        if (band.coldestC() <= band.onC()) {
            return new Reason(Cause.COLD, band.coldestC(), band.onC());
        }
        return band.aheadC() <= band.onC()
                ? new Reason(Cause.COLD_SOON, band.aheadC(), band.onC())
                : new Reason(Cause.HOLDING, band.coldestC(), band.offC());
    }
}
