package rimeward.core.watch;

import rimeward.core.judgement.Inside;
import rimeward.core.tunnel.TunnelModel;

/**
 * Heat by its effect, where no meter shows it. The lift that the commanded heat should give now is taken off the air
 * temperature; what remains, the base, changes only as slowly as weather does. If the base falls by most of the expected
 * lift within minutes of running, the heat is not arriving. Heat after a pause begins a new comparison: a tunnel that went
 * cold for want of heat says nothing about the heat it gets now. So does a door that was open, or a time without eyes.
 *
 * <p>The lift passes two lags, the air's and the sensor's. Thresholds are wide because the settings' heat loss is a guess:
 * false alarms need a guess more than twice too large.
 *
 * @param known whether the base has been set
 * @param commandedW power that should have been arriving, W
 * @param airLiftK expected lift of the air, K
 * @param liftK the same as a sensor would see it, K
 * @param fastC the base, smoothed over minutes, °C
 * @param slowC where weather alone could have taken the base, °C
 * @param missingForS how long heat has seemed to be missing, s
 */
record HeatTrace(
        boolean known,
        double commandedW,
        double airLiftK,
        double liftK,
        double fastC,
        double slowC,
        double missingForS) {

    static final HeatTrace START = new HeatTrace(false, 0, 0, 0, 0, 0, 0);

    // How quickly each follows, as parts of the way per second: of a sensor's lag, of minutes.
    static final double SENSOR_PER_S = 1 / 150.0;
    private static final double FAST_PER_S = 1 / 120.0;

    /** Weather moves the base no faster than this, K/s: 2 K an hour, in which a blown fuse takes minutes. Own choice. */
    private static final double WEATHER_K_PER_S = 2 / 3600.0;

    /** Less lift than this is lost in the weather, K. */
    private static final double LEAST_LIFT_K = 1.0;

    /** So much more power is more heat, and not a meter's unrest, W. */
    private static final double MORE_W = 50;

    private static final double SHARE = 0.6;
    private static final double CONFIRM_MISSING_S = 180;

    /** The next state, given the power that should be arriving now by the relays' states, W. */
    HeatTrace after(Inside.Seen inside, double nowW, TunnelModel tunnel, double dtS) {
        double airLift = Lag.after(airLiftK, nowW * tunnel.quickLiftKPerW(), tunnel.airAnswersPerS(), dtS);
        double lift = Lag.after(liftK, airLift, SENSOR_PER_S, dtS);
        double baseC = inside.middleC() - lift;
        if (!known) {
            return new HeatTrace(true, nowW, airLift, lift, baseC, baseC, 0);
        }
        double fast = Lag.after(fastC, baseC, FAST_PER_S, dtS);
        boolean anew = nowW > commandedW + MORE_W && lift < LEAST_LIFT_K;
        double against = anew ? fast : slowC;
        double unexplainedK = fast - against;
        boolean missing = nowW > 0 && lift >= LEAST_LIFT_K && unexplainedK <= -SHARE * lift;
        double weatherK = WEATHER_K_PER_S * dtS;
        double slow = missing ? against : against + StrictMath.max(-weatherK, StrictMath.min(weatherK, unexplainedK));
        return new HeatTrace(true, nowW, airLift, lift, fast, slow, missing ? missingForS + dtS : 0);
    }

    /** The next state while the air says nothing about heat: the door is open, or nobody sees. */
    HeatTrace unseen(double nowW, TunnelModel tunnel, double dtS) {
        double airLift = Lag.after(airLiftK, nowW * tunnel.quickLiftKPerW(), tunnel.airAnswersPerS(), dtS);
        double lift = Lag.after(liftK, airLift, SENSOR_PER_S, dtS);
        return new HeatTrace(false, nowW, airLift, lift, 0, 0, 0);
    }

    boolean heatMissing() {
        return missingForS >= CONFIRM_MISSING_S;
    }
}
