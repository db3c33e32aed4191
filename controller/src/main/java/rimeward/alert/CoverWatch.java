package rimeward.alert;

import rimeward.core.Outcome;
import rimeward.core.guard.Guarded;
import rimeward.core.judgement.Inside;
import rimeward.core.judgement.Outside;
import rimeward.core.watch.Delivery;
import rimeward.site.RelaySet;
import rimeward.site.Site;
import rimeward.site.Tunnel;

/**
 * A sudden extra loss: the air stays far below what the assumed tunnel says of its heat, outside and mass, and did not before.
 *
 * <p>False alarms: sun is not known of and only makes the air warmer than expected, so cloud and dusk raise none; a tunnel that loses
 * more than assumed, or a wind that lasts, becomes usual within hours; a wind that adds a third to the loss stays below the limit; a heater
 * that fails is looked for by others, and while one is known to fail nothing is said here.
 */
final class CoverWatch {
    /** What was expected is drawn to what is seen within this, s: old errors fade. Own choice, as all below. */
    private static final double FADES_S = 1800;

    private static final double USUAL_S = 21_600;
    private static final double LEAST_GAP_K = 2.5;
    private static final double SHARE_OF_LIFT = 0.3;
    private static final double LEAST_LIFT_K = 4;
    private static final double CLEAR_SHARE = 0.5;

    /** Longer between two looks, and nothing is known of what lies between, s. */
    private static final double LONGEST_S = 60;

    private boolean begun;
    private double massC;
    private double expectedC;
    private double usualK;
    private RelaySet closed = RelaySet.none();

    boolean holds(Site site, Outcome outcome, boolean did, double dtS) {
        Guarded guarded = outcome.guarded();
        RelaySet ran = closed;
        closed = guarded.closed();
        if (!(outcome.judgement().inside() instanceof Inside.Seen inside)
                || !(outcome.judgement().outside() instanceof Outside.Seen outside)) {
            begun = false;
            return did;
        }
        double airC = inside.middleC();
        boolean aired = outcome.judgement().doorOpen()
                || (site.ventRelay().bits() & (ran.bits() | closed.bits())) != 0
                || !outcome.deliveries().failed().isEmpty();
        if (!begun || dtS <= 0 || dtS > LONGEST_S || aired) {
            massC = begun ? massC : airC;
            expectedC = airC;
            begun = true;
            return did && !aired;
        }
        double gapK = gapK(site, outcome, ran, airC, outside.airC(), dtS);
        double suddenK = gapK - StrictMath.max(0, usualK);
        usualK += (gapK - usualK) * dtS / (USUAL_S + dtS);
        double liftK = airC - outside.airC();
        double limitK = StrictMath.max(LEAST_GAP_K, SHARE_OF_LIFT * liftK) * (did ? CLEAR_SHARE : 1);
        return suddenK > limitK && (did || liftK > LEAST_LIFT_K);
    }

    /** One step of the tunnel's two nodes; implicit, so that no step is too long. */
    private double gapK(Site site, Outcome outcome, RelaySet ran, double airC, double outsideC, double dtS) {
        Tunnel tunnel = site.tunnel();
        double answersWPerK = tunnel.heatLossWPerK() + tunnel.massCouplingWPerK();
        double heldC =
                (tunnel.heatLossWPerK() * outsideC + tunnel.massCouplingWPerK() * massC + heatW(site, outcome, ran))
                        / answersWPerK;
        expectedC += (heldC - expectedC) * dtS / (tunnel.airCapacityJPerK() / answersWPerK + dtS);
        expectedC += (airC - expectedC) * dtS / (FADES_S + dtS);
        massC += (airC - massC) * dtS / (tunnel.massCapacityJPerK() / tunnel.massCouplingWPerK() + dtS);
        return expectedC - airC;
    }

    private static double heatW(Site site, Outcome outcome, RelaySet ran) {
        double sumW = 0;
        for (int i = 0; i < site.machines().size(); i++) {
            Delivery seen = outcome.deliveries().of(i);
            boolean gives = ran.has(i) && seen != Delivery.NOT_GIVING && seen != Delivery.STARTING;
            sumW += gives && site.machines().get(i).role().isHeatSource()
                    ? site.machines().get(i).ratedW()
                    : 0;
        }
        return sumW;
    }
}
