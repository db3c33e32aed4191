package rimeward.homie;

import rimeward.core.Outcome;
import rimeward.site.Site;

/** The floor, and within what it may be set. */
final class Floors {
    private Floors() {}

    static double lowestC(Site site) {
        return site.floorC();
    }

    static double highestC(Site site) {
        double belowHotC = site.targets().hotC()
                - site.targets().guardMarginK()
                - site.targets().differentialK()
                - 1;
        return StrictMath.max(lowestC(site), StrictMath.min(20, belowHotC));
    }

    static double heldC(Site site, Outcome outcome) {
        return site.floorC();
    }
}
