package rimeward.core.decision;

import rimeward.air.Latent;
import rimeward.core.outlook.Outlook;
import rimeward.core.tunnel.TunnelModel;
import rimeward.site.Drying;
import rimeward.site.Site;

/**
 * What the dryer's heat is worth for the night, beside the heater's. By the first law a dryer turns every watt it draws into heat, and the
 * latent heat of the water it collects comes on top; but it has no stages, and lifts the air higher than the floor needs. So it pays where
 * that still takes less than the heater would, or where the water must be taken out soon anyway: then its electricity is spent either
 * way, and what it gives while heat is wanted comes free.
 *
 * @param givesW heat it gives while it runs, W
 * @param needsW heat it would have to give to hold the floor alone now, W
 * @param electricW electricity on average if it warms, W
 * @param heaterW electricity on average if the heater warms, W
 * @param driesAnyway whether the dryer will soon run for dryness in any case
 */
public record DryerHeat(double givesW, double needsW, double electricW, double heaterW, boolean driesAnyway) {
    /** The dryer warms from this much above the heater's band on, so that the heater stands ready below it, K. Own choice. */
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

    static DryerHeat of(Situation now, Drying.Dryer dryer, double outsideC, boolean driesAnyway) {
        Site site = now.site();
        TunnelModel tunnel = now.tunnel();
        double ratedW = dryer.machine().ratedW();
        double collectedKgPerS = COLD_SHARE * dryer.collectionLPerH() / 3600;
        double givesW = ratedW + LATENT_SHARE * collectedKgPerS * Latent.vaporisationJPerKg(site.floorC());
        double onC = site.floorC() + site.targets().guardMarginK();
        double holdC = onC + site.targets().differentialK() / 2;
        double nightC = nightC(now.outlook(), outsideC);
        double needsW = tunnel.heatToHoldW(holdC + RESERVE_K, outsideC);
        double heaterW = StrictMath.max(0, tunnel.heatToHoldW(holdC, nightC));
        double liftedW = StrictMath.max(0, tunnel.heatToHoldW(onC + RESERVE_K + SWING_K / 2, nightC));
        double electricW = StrictMath.min(ratedW, liftedW * ratedW / givesW);
        return new DryerHeat(givesW, needsW, electricW, heaterW, driesAnyway);
    }

    /** Outside for the rest of the night: between now and the lowest expected, where a forecast knows of one. */
    private static double nightC(Outlook outlook, double outsideC) {
        return outlook instanceof Outlook.Night night
                ? (outsideC + StrictMath.min(outsideC, night.lowestOutsideC())) / 2
                : outsideC;
    }

    /** Whether it can hold the floor by itself. */
    boolean holds() {
        return needsW * HEADROOM <= givesW;
    }

    /** Whether it does the heater's work for less. */
    public boolean pays() {
        return heaterW > 0 && (driesAnyway || electricW < heaterW);
    }
}
