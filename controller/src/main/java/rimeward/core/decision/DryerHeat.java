package rimeward.core.decision;

import rimeward.air.Latent;
import rimeward.core.tunnel.TunnelModel;
import rimeward.site.Drying;
import rimeward.site.Site;

/**
 * What the dryer's heat is worth: its electric power plus the latent heat of the water it collects, of which a part is
 * paid back to evaporation.
 *
 * @param givesW heat it gives while it runs, W
 * @param needsW heat it would have to give to hold the floor, W
 * @param electricW electricity that takes on average, W
 * @param heaterW electricity the heater would take instead, W
 */
record DryerHeat(double givesW, double needsW, double electricW, double heaterW) {
    /** The dryer holds the floor this much higher than the heater, so that the heater stands ready below it, K. */
    static final double RESERVE_K = 0.8;

    /**
     * It warms until the air is this much higher still, K: a dryer likes long runs, and where it only just holds the floor
     * the air never gets there. Own choice.
     */
    static final double SWING_K = 2.5;

    /** Share of the latent heat that stays: the rest evaporates new water. Own choice until it is learned. */
    private static final double LATENT_SHARE = 0.5;

    /** Collection falls with the cold: share of the rated one near the floor. Common practice, no source. */
    private static final double COLD_SHARE = 0.8;

    /** It must be able to give this much more than needed to be asked alone. Own choice. */
    private static final double HEADROOM = 1.1;

    static DryerHeat of(Site site, Drying.Dryer dryer, TunnelModel tunnel, double holdC, double outsideC) {
        double collectedKgPerS = COLD_SHARE * dryer.collectionLPerH() / 3600;
        double latentW = LATENT_SHARE * collectedKgPerS * Latent.vaporisationJPerKg(site.floorC());
        double givesW = dryer.machine().ratedW() + latentW;
        double needsW = StrictMath.max(0, tunnel.heatToHoldW(holdC + RESERVE_K, outsideC));
        double heaterW = StrictMath.max(0, tunnel.heatToHoldW(holdC, outsideC));
        return new DryerHeat(givesW, needsW, needsW * dryer.machine().ratedW() / givesW, heaterW);
    }

    /** Whether it can hold the floor by itself, for less electricity. */
    boolean pays() {
        return needsW * HEADROOM <= givesW && electricW < heaterW;
    }
}
