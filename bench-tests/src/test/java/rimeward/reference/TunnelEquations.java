package rimeward.reference;

import org.hipparchus.ode.OrdinaryDifferentialEquation;
import rimeward.air.AirConstants;
import rimeward.air.Latent;
import rimeward.air.MoistAir;
import rimeward.air.Saturation;
import rimeward.sim.physics.DryerParameters;
import rimeward.sim.physics.HeaterParameters;
import rimeward.sim.physics.TunnelParameters;

/**
 * The tunnel's balance written out a second time, as plain differential equations for somebody else's integrator: nothing is
 * linearised, frozen or guessed, and the film is found by bisection. A heater and a sorption dryer, no sun, no run-off.
 */
final class TunnelEquations implements OrdinaryDifferentialEquation {
    static final int AIR = 0;
    static final int MASS = 1;
    static final int ELEMENT = 2;
    static final int ROTOR = 3;
    static final int HUMIDITY = 4;
    static final int WATER = 5;
    static final int FROST = 6;
    static final int MEDIUM = 7;

    private static final double CP = AirConstants.DRY_AIR_HEAT_J_PER_KG_K;
    private static final double FUSION = Latent.sublimationJPerKg(0) - Latent.vaporisationJPerKg(0);

    private final TunnelParameters tunnel;
    private final HeaterParameters heater;
    private final DryerParameters.Sorption dryer;
    private final CoverEquations cover;
    private final double airKgPerM3 = MoistAir.densityKgPerM3(5, 0.004, ColdNight.PRESSURE_PA);

    /** What is switched on, changed between integrations. */
    double heaterW;

    boolean dryerRuns;
    boolean dryerFanRuns;

    TunnelEquations(TunnelParameters tunnel, HeaterParameters heater, DryerParameters.Sorption dryer) {
        this.tunnel = tunnel;
        this.heater = heater;
        this.dryer = dryer;
        cover = new CoverEquations(tunnel);
    }

    @Override
    public int getDimension() {
        return 8;
    }

    @Override
    public double[] computeDerivatives(double atS, double[] y) {
        double outsideC = ColdNight.airC(atS);
        cover.solve(y[AIR], y[MASS], y[HUMIDITY], y[WATER], y[FROST], atS);
        double leakKgPerS = airKgPerM3
                * 0.001
                * tunnel.leakCm2()
                * Math.sqrt(0.000145 * Math.abs(y[AIR] - outsideC)
                        + 0.000174 * ColdNight.windMPerS(atS) * ColdNight.windMPerS(atS));
        double evaporates = evaporatesKgPerS(y);
        double collects = collectsKgPerS(y);
        double elementW = (heaterW > 0 ? heater.blownWPerK() : heater.stillWPerK()) * (y[ELEMENT] - y[AIR]);
        double rotorW = (dryerFanRuns ? dryer.body().blownWPerK() : dryer.body().stillWPerK()) * (y[ROTOR] - y[AIR]);
        double massW = tunnel.massAirWPerK() * (y[AIR] - y[MASS]);
        double airKg = airKgPerM3 * tunnel.volumeM3();

        double[] dy = new double[8];
        dy[AIR] = (elementW + rotorW - massW - cover.fromAirW + leakKgPerS * CP * (outsideC - y[AIR]))
                / (airKg * CP + tunnel.quickJPerK());
        dy[MASS] = (massW
                        + tunnel.groundWPerK() * (tunnel.deepSoilC() - y[MASS])
                        - cover.fromMassW
                        - Latent.vaporisationJPerKg(y[MASS]) * evaporates)
                / tunnel.massJPerK();
        dy[ELEMENT] = (heaterW - elementW) / heater.elementJPerK();
        dy[ROTOR] = (dryerW() + Latent.vaporisationJPerKg(y[AIR]) * collects - rotorW)
                / dryer.body().innerJPerK();
        dy[HUMIDITY] = (evaporates
                        - collects
                        - cover.settlesKgPerS
                        + leakKgPerS * (ColdNight.humidityKgPerKg(atS) - y[HUMIDITY]))
                / airKg;
        double freezes = cover.freezingW / FUSION;
        dy[WATER] = (1 - cover.frostPart) * cover.settlesKgPerS - freezes;
        dy[FROST] = cover.frostPart * cover.settlesKgPerS + freezes;
        dy[MEDIUM] = -evaporates;
        return dy;
    }

    private double dryerW() {
        return (dryerFanRuns ? dryer.body().fanW() : 0) + (dryerRuns ? dryer.regeneratorW() : 0);
    }

    private double evaporatesKgPerS(double[] y) {
        double deficit = saturated(Saturation.overWaterPa(y[MASS])) - y[HUMIDITY];
        double free = deficit < 0 ? 1 : Math.min(1, y[MEDIUM] / (0.3 * tunnel.mediumFullKg()));
        return tunnel.wetM2() * 2.0 / CP * free * deficit;
    }

    private double collectsKgPerS(double[] y) {
        double rh = 100 * y[HUMIDITY] / saturated(Saturation.overWaterPa(y[AIR]));
        double warm = Math.max(0, Math.min(1, (y[ROTOR] - y[AIR]) / dryer.warmRiseK()));
        double byAir = Math.max(0, 1 + dryer.perK() * (y[AIR] - 10));
        double above = Math.max(0, rh - dryer.residuePercent()) / (80 - dryer.residuePercent());
        return dryerRuns ? dryer.ratedKgPerH() / 3600 * warm * byAir * above : 0;
    }

    /** Relative humidity of the air over water, %. */
    static double rhPercent(double[] y) {
        return 100 * MoistAir.vapourPa(y[HUMIDITY], ColdNight.PRESSURE_PA) / Saturation.overWaterPa(y[AIR]);
    }

    static double saturated(double vapourPa) {
        return MoistAir.humidityRatioKgPerKg(vapourPa, ColdNight.PRESSURE_PA);
    }
}
