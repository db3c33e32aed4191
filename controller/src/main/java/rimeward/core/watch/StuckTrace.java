package rimeward.core.watch;

import rimeward.core.tunnel.TunnelModel;
import rimeward.site.RelaySet;

/**
 * Heat that stays after its relay has opened, where no meter shows it. Two tales are held against each other: the heat has
 * gone, and the base (the air without the heat that should be there) stays where it was; or it has not, and the base rises by
 * just the lift that should have gone, no sooner, no later and no farther. The sun makes it rise too, but goes on and on: so a
 * rise that does not fit ends the suspicion.
 *
 * @param suspects the machines whose relays opened last
 * @param pullK lift they gave together in the end, K
 * @param airLiftK how much of it should have left the air by now, K
 * @param liftK the same as a sensor would see it, K
 * @param fromC the base when they opened, °C
 * @param forS how long its rise has fitted, s
 */
record StuckTrace(RelaySet suspects, double pullK, double airLiftK, double liftK, double fromC, double forS) {
    static final StuckTrace NONE = new StuckTrace(RelaySet.none(), 0, 0, 0, 0, 0);

    /** Less lift than this is lost in the weather, K. Own choice. */
    private static final double LEAST_PULL_K = 2.5;

    /** Judged when so much of the lift should have gone. Own choice. */
    private static final double RIPE_SHARE = 0.75;

    /** The settings' heat loss is a guess, and the weather moves: the rise need not fit better. Own choice. */
    private static final double FITS_SHARE = 0.3;

    private static final double CONFIRM_S = 3600;

    static StuckTrace opened(RelaySet suspects, double ratedW, double baseC, TunnelModel tunnel) {
        double pullK = ratedW * tunnel.quickLiftKPerW();
        return pullK >= LEAST_PULL_K ? new StuckTrace(suspects, pullK, 0, 0, baseC, 0) : NONE;
    }

    /** The next state while no source of heat changes. */
    StuckTrace after(double baseC, TunnelModel tunnel, double dtS) {
        if (suspects.isEmpty()) {
            return this;
        }
        double airLift = Lag.after(airLiftK, pullK, tunnel.airAnswersPerS(), dtS);
        double lift = Lag.after(liftK, airLift, HeatTrace.SENSOR_PER_S, dtS);
        double nowForS = lift >= RIPE_SHARE * pullK ? forS + dtS : 0;
        boolean fits = StrictMath.abs(baseC - fromC - lift) <= FITS_SHARE * lift;
        boolean stays = confirmed() ? baseC - fromC > lift / 2 : nowForS == 0 || fits;
        return stays ? new StuckTrace(suspects, pullK, airLift, lift, fromC, nowForS) : NONE;
    }

    boolean confirmed() {
        return forS >= CONFIRM_S;
    }
}
