package rimeward.core.decision;

import rimeward.site.Machine;
import rimeward.site.Site;

/**
 * The warm duty as our law sees it: how many sources of heat it takes, the heater's stages first and the dryer last. One more
 * joins, or one fewer runs, when the air shows that the running ones are too few or too many; the tunnel model says with how
 * many to begin.
 *
 * @param sources how many run; 0 when the duty is not needed
 * @param wentUp whether the last change was upwards
 * @param sinceS since that change, s
 */
record WarmDuty(int sources, boolean wentUp, double sinceS) {
    static final WarmDuty START = new WarmDuty(0, false, 0);

    /** The model is believed with this much to spare when it says with how many stages to begin. Own choice. */
    private static final double BELIEVED_SHARE = 0.9;

    /** This far above the band the model is not believed any more when it says a stage is needed, K. Own choice. */
    private static final double KEEP_K = 1;

    /** This far above the band nothing need run, whatever the rate, K. Own choice. */
    private static final double FAR_ABOVE_K = 2;

    /** @param neededW steady heat that holds the band by the tunnel model, W; 0 where nobody knows */
    WarmDuty after(Site site, FloorBand band, double neededW, double dtS) {
        if (sources == 0) {
            return band.needed(false) ? new WarmDuty(toBegin(site, neededW), true, 0) : START;
        }
        double nowS = sinceS + dtS;
        boolean settled = nowS >= site.heater().deadTimeS(); // the last change can be seen by now
        boolean falling = band.isFalling();
        if (band.needed(false) && falling && (settled || !wentUp) && sources < most(site)) {
            return new WarmDuty(sources + 1, true, 0);
        }
        boolean warm = band.aheadC() >= band.offC() && band.coldestC() > band.onC();
        if (warm && band.coldestC() >= band.offC() + FAR_ABOVE_K) {
            return START;
        }
        boolean lasting = !falling || band.coldestC() >= band.offC();
        boolean spare = sources > toKeep(site, neededW) || band.coldestC() >= band.offC() + KEEP_K;
        if (warm && lasting && spare && (settled || wentUp)) {
            return new WarmDuty(sources - 1, false, 0);
        }
        return new WarmDuty(sources, wentUp, nowS);
    }

    private static int toBegin(Site site, double neededW) {
        int stages = 1;
        double givenW = site.heater().stages().get(0).ratedW();
        while (givenW < BELIEVED_SHARE * neededW
                && stages < site.heater().stages().size()) {
            givenW += site.heater().stages().get(stages).ratedW();
            stages++;
        }
        return stages;
    }

    /** Stages that the model says are needed all the time: stopping them would only mean starting them again. */
    private static int toKeep(Site site, double neededW) {
        int stages = 0;
        double givenW = 0;
        for (Machine stage : site.heater().stages()) {
            givenW += stage.ratedW();
            stages += givenW <= BELIEVED_SHARE * neededW ? 1 : 0;
        }
        return stages;
    }

    private static int most(Site site) {
        return site.heater().stages().size() + site.dryerRelay().size();
    }

    boolean takesDryer(Site site) {
        return sources > site.heater().stages().size();
    }

    /** Why the source at this place, counted from 0, runs or rests. */
    Reason reason(FloorBand band, int place) {
        if (place < sources) {
            return place == sources - 1 && place > 0 && band.coldestC() <= band.onC()
                    ? new Reason(Cause.NOT_ENOUGH, band.coldestC(), band.onC())
                    : whyOn(band);
        }
        if (sources > 0) {
            return whyNoMore(band);
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

    private static Reason whyNoMore(FloorBand band) {
        if (!band.needed(false)) {
            return new Reason(Cause.ENOUGH_WITHOUT, band.coldestC(), band.onC());
        }
        return band.isFalling()
                ? new Reason(Cause.NOT_FELT_YET, band.coldestC(), band.aheadC())
                : new Reason(Cause.LIFTED, band.coldestC(), band.onC());
    }
}
