package rimeward.core.watch;

import rimeward.core.judgement.Inside;
import rimeward.core.tunnel.TunnelModel;

/**
 * Heat by its effect, where no meter shows it. The lift that the commanded heat should give now is taken off the air
 * temperature; what remains, the base, changes only as slowly as weather does. If the base falls by most of the expected
 * lift within minutes of running, the heat is not arriving; if it rises so after switching off, the heat has not gone. Heat
 * after a pause begins a new comparison: a tunnel that went cold for want of heat says nothing about the heat it gets now.
 *
 * <p>The lift passes two lags, the air's and the sensor's. Thresholds are wide because the settings' heat loss is a guess:
 * false alarms need a guess three times too large.
 *
 * @param known whether the base has been set
 * @param commandedW power that should have been arriving, W
 * @param airLiftK expected lift of the air, K
 * @param liftK the same as a sensor would see it, K
 * @param recentLiftK highest expected lift of late, fading over half an hour unless it seems to stay, K
 * @param fastC the base, smoothed over minutes, °C
 * @param slowC the base, smoothed over an hour, °C
 * @param missingForS how long heat has seemed to be missing, s
 * @param surplusForS how long heat has seemed to stay on, s
 */
record HeatTrace(
        boolean known,
        double commandedW,
        double airLiftK,
        double liftK,
        double recentLiftK,
        double fastC,
        double slowC,
        double missingForS,
        double surplusForS) {

    static final HeatTrace START = new HeatTrace(false, 0, 0, 0, 0, 0, 0, 0, 0);

    // How quickly each follows, as parts of the way per second: of a sensor's lag, of minutes, of an hour, of half an
    // hour.
    private static final double SENSOR_PER_S = 1 / 150.0;
    private static final double FAST_PER_S = 1 / 120.0;
    private static final double SLOW_PER_S = 1 / 3600.0;
    private static final double RECENT_PER_S = 1 / 1800.0;

    /** Less lift than this is lost in the weather, K. */
    private static final double LEAST_LIFT_K = 1.0;

    /** So much more power is more heat, and not a meter's unrest, W. */
    private static final double MORE_W = 50;

    private static final double SHARE = 0.7;
    private static final double CONFIRM_MISSING_S = 180;
    private static final double CONFIRM_SURPLUS_S = 900;

    /** The next state, given the power that should be arriving now by the relays' states, W. */
    HeatTrace after(Inside.Seen inside, double nowW, TunnelModel tunnel, double dtS) {
        double airLift = lagged(airLiftK, nowW * tunnel.quickLiftKPerW(), tunnel.airAnswersPerS(), dtS);
        double lift = lagged(liftK, airLift, SENSOR_PER_S, dtS);
        double faded = surplusForS > 0 ? recentLiftK : lagged(recentLiftK, 0, RECENT_PER_S, dtS);
        double recent = StrictMath.max(lift, faded);
        double baseC = inside.middleC() - lift;
        if (!known) {
            return new HeatTrace(true, nowW, airLift, lift, recent, baseC, baseC, 0, 0);
        }
        double fast = lagged(fastC, baseC, FAST_PER_S, dtS);
        boolean anew = nowW > commandedW + MORE_W && lift < LEAST_LIFT_K;
        double against = anew ? fast : slowC;
        double unexplainedK = fast - against;
        boolean missing = nowW > 0 && lift >= LEAST_LIFT_K && unexplainedK <= -SHARE * lift;
        boolean surplus = nowW <= 0 && recent >= LEAST_LIFT_K && unexplainedK >= SHARE * recent;
        double slow = missing || surplus ? against : lagged(against, baseC, SLOW_PER_S, dtS);
        return new HeatTrace(
                true,
                nowW,
                airLift,
                lift,
                recent,
                fast,
                slow,
                missing ? missingForS + dtS : 0,
                surplus ? surplusForS + dtS : 0);
    }

    boolean heatMissing() {
        return missingForS >= CONFIRM_MISSING_S;
    }

    boolean heatStays() {
        return surplusForS >= CONFIRM_SURPLUS_S;
    }

    private static double lagged(double was, double towards, double perS, double dtS) {
        return was + (towards - was) * StrictMath.min(1, dtS * perS);
    }
}
