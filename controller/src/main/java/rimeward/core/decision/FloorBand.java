package rimeward.core.decision;

import rimeward.core.judgement.Inside;
import rimeward.core.tunnel.TunnelModel;
import rimeward.site.Site;

/**
 * Where heat goes on and off, with anticipation: what counts is not where the coldest bench is but where it will be by the
 * time a change of the heater is felt.
 *
 * @param onC heat on at or below, °C
 * @param offC heat off at or above, °C
 * @param coldestC the coldest bench now, °C
 * @param aheadC the bench that will be the coldest by the time a change is felt, then, °C: each goes on at its own rate
 */
public record FloorBand(double onC, double offC, double coldestC, double aheadC) {

    /** No rate, however steep, is believed to lead farther than this, K. Common practice, no source. */
    private static final double MOST_AHEAD_K = 4;

    public static FloorBand of(Site site, TunnelModel tunnel, Inside.Seen inside) {
        double aheadC = Double.POSITIVE_INFINITY;
        for (int i = 0; i < inside.benches().size(); i++) {
            Inside.Bench bench = inside.benches().get(i);
            double changeK = StrictMath.max(
                    -MOST_AHEAD_K, StrictMath.min(MOST_AHEAD_K, bench.slopeKPerS() * tunnel.changeGoesOnS()));
            aheadC = StrictMath.min(aheadC, bench.lowestC() + changeK);
        }
        double onC = site.floorC() + site.targets().guardMarginK();
        return new FloorBand(onC, onC + site.targets().differentialK(), inside.coldestC(), aheadC);
    }

    /** Whether the tunnel's coldest place gets colder: another bench may be it by then. */
    public boolean isFalling() {
        return aheadC < coldestC;
    }

    /** The latched answer: on at the lower limit; off at the upper, and never while still below the lower; else as it was. */
    public boolean needed(boolean wasNeeded) {
        return StrictMath.min(coldestC, aheadC) <= onC || (wasNeeded && aheadC < offC);
    }
}
