package rimeward.core.decision;

import rimeward.core.judgement.Inside;
import rimeward.core.tunnel.TunnelModel;
import rimeward.site.Site;

/**
 * Where heat goes on and off, with anticipation: the faster the air falls, the earlier, so that what it loses before the
 * heater is felt never takes it below the floor.
 *
 * @param onC heat on at or below, °C
 * @param offC heat off at or above, °C
 */
public record FloorBand(double onC, double offC) {

    /** Anticipation never starts heat farther above the floor than this, K. Common practice, no source. */
    static final double MOST_MARGIN_K = 4;

    public static FloorBand of(Site site, TunnelModel tunnel, Inside.Seen inside) {
        double fallKPerS = StrictMath.max(0, -inside.slopeKPerS());
        double anticipatedK = fallKPerS * effectiveS(site.heater().deadTimeS(), tunnel.airTimeConstantS());
        double marginK =
                StrictMath.min(MOST_MARGIN_K, StrictMath.max(site.targets().guardMarginK(), anticipatedK));
        double onC = site.floorC() + marginK;
        return new FloorBand(onC, onC + site.targets().differentialK());
    }

    /**
     * A fall at this rate slows down as the air nears what the mass holds: over the dead time it goes on for only
     * τ·(1 − e^(−dead/τ)) seconds' worth. Padé form of 1 − e^−x: within 1 % up to x = 2; beyond, the whole fall is counted.
     */
    private static double effectiveS(double deadS, double timeConstantS) {
        double x = deadS / timeConstantS;
        return x < 2 ? deadS / (1 + x / 2 + x * x / 12) : timeConstantS;
    }

    /** The latched answer: on at the lower limit, off at the upper, else as it was. */
    public boolean needed(double coldestC, boolean wasNeeded) {
        return coldestC <= onC || (wasNeeded && coldestC < offC);
    }
}
