package rimeward.core.guard;

import rimeward.core.tunnel.TunnelModel;
import rimeward.site.Machine;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/**
 * Heat without eyes: when no inside temperature is believed, the stages run for the share of each period that the tunnel
 * model says the outside cold takes. The stages take turns at being the first, so that one which is dead without anybody
 * seeing it takes no more than its own share of the heat with it. One that is known to be dead comes last.
 */
final class BlindCycle {
    /** Long enough for a contactor, no longer than the minutes in which a light tunnel's air follows. Own choice. */
    static final double PERIOD_S = 600;

    /** Held this much above the floor band's lower limit, because a model is not a thermometer. Own choice. */
    static final double RESERVE_K = 3;

    /** A failed stage with a meter is still tried this long in each period, to see whether it was mended, s. Own choice. */
    private static final double TRIAL_S = 60;

    private BlindCycle() {}

    /** Heat that holds the floor with reserve, W; 0 when outside is warm enough. */
    static double neededW(Site site, TunnelModel tunnel, double outsideC) {
        double holdC = site.floorC() + site.targets().guardMarginK() + RESERVE_K;
        return StrictMath.max(0, tunnel.heatToHoldW(holdC, outsideC));
    }

    /** The place in the cycle, which has one period for each stage's turn: it begins anew when all have had theirs, s. */
    static double phaseS(Site site, double sinceBeginS) {
        return sinceBeginS < PERIOD_S * site.heater().stages().size() ? sinceBeginS : 0;
    }

    /** The stages to run at this place of the cycle. */
    static RelaySet stages(Site site, RelaySet failed, double neededW, double phaseS) {
        int count = site.heater().stages().size();
        int turn = (int) (phaseS / PERIOD_S);
        double placeS = phaseS - turn * PERIOD_S;
        RelaySet on = RelaySet.none();
        double leftW = neededW;
        for (int i = 0; i < count; i++) {
            int stage = (turn + i) % count;
            if (!failed.has(stage)) {
                on = runs(site, stage, leftW, placeS, 0) ? on.with(stage) : on;
                leftW -= site.heater().stages().get(stage).ratedW();
            }
        }
        for (int stage = 0; stage < count; stage++) {
            boolean tried = failed.has(stage) && neededW > 0;
            double trialS = site.heater().stages().get(stage).hasPowerFeedback() ? TRIAL_S : 0;
            on = tried && runs(site, stage, leftW, placeS, trialS) ? on.with(stage) : on;
        }
        return on;
    }

    /** Whether a stage runs now that has this much heat left to give, and at least so long in each period. */
    private static boolean runs(Site site, int stage, double leftW, double placeS, double leastS) {
        Machine machine = site.heater().stages().get(stage);
        double shareS = leftW > 0 ? StrictMath.max(PERIOD_S * leftW / machine.ratedW(), machine.minOnS()) : 0;
        return placeS < StrictMath.max(shareS, leastS);
    }
}
