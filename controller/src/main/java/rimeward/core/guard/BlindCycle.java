package rimeward.core.guard;

import rimeward.core.tunnel.TunnelModel;
import rimeward.site.Machine;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/**
 * Heat without eyes: when no inside temperature is believed, the stages run for the share of each cycle that the tunnel
 * model says the outside cold takes.
 */
final class BlindCycle {
    /** Long enough for a contactor, no longer than the minutes in which a light tunnel's air follows. Own choice. */
    static final double PERIOD_S = 600;

    /** Held this much above the floor band's lower limit, because a model is not a thermometer. Own choice. */
    static final double RESERVE_K = 3;

    private BlindCycle() {}

    /** Heat that holds the floor with reserve, W; 0 when outside is warm enough. */
    static double neededW(Site site, TunnelModel tunnel, double outsideC) {
        double holdC = site.floorC() + site.targets().guardMarginK() + RESERVE_K;
        return StrictMath.max(0, tunnel.heatToHoldW(holdC, outsideC));
    }

    /** The place in the cycle: it begins anew when a period is over. */
    static double phaseS(double sinceBeginS) {
        return sinceBeginS < PERIOD_S ? sinceBeginS : 0;
    }

    /** The stages to run at this place of the cycle. */
    static RelaySet stages(Site site, double neededW, double phaseS) {
        RelaySet on = RelaySet.none();
        double leftW = neededW;
        for (int i = 0; i < site.heater().stages().size() && leftW > 0; i++) {
            Machine stage = site.heater().stages().get(i);
            double shareS = PERIOD_S * leftW / stage.ratedW();
            if (shareS >= PERIOD_S || phaseS < StrictMath.max(shareS, stage.minOnS())) {
                on = on.with(i);
            }
            leftW -= stage.ratedW();
        }
        return on;
    }
}
