package rimeward.reference;

import rimeward.air.AirConstants;
import rimeward.air.Latent;
import rimeward.air.Saturation;
import rimeward.sim.physics.Panel;
import rimeward.sim.physics.TunnelParameters;

/** The cover's two balances, inner and outer surface, solved by bisection and Newton without any memory. */
final class CoverEquations {
    private static final double SIGMA = 5.670374419e-8;
    private static final double EMISSIVITY = 0.95;
    private static final double SKY_VIEW = 0.65;
    private static final double INSIDE_W_PER_M2K = 4.0;
    private static final double ICE_W_PER_M2K = 30;
    private static final double WET_KG_PER_M2 = 0.02;
    private static final double FUSION = Latent.sublimationJPerKg(0) - Latent.vaporisationJPerKg(0);

    private final double coverM2;
    private final double floorM2;
    private final double throughWPerK;
    private final double dryShare;
    private final double wetShare;

    double fromAirW;
    double fromMassW;
    double settlesKgPerS;
    double freezingW;
    double frostPart;

    private double airC;
    private double massC;
    private double humidity;
    private double wet;
    private double waterCover;
    private double frostCover;
    private double frostOfAll;
    private double emits;
    private double outsideC;
    private double skyC;
    private double windWPerM2K;

    CoverEquations(TunnelParameters tunnel) {
        coverM2 = tunnel.coverM2();
        floorM2 = tunnel.floorM2();
        double conductance = 0;
        double dry = 0;
        double wetSum = 0;
        for (Panel panel : tunnel.cover()) {
            conductance += panel.areaM2() / panel.kind().resistanceM2KPerW();
            dry += panel.areaM2() * panel.kind().dryLongWaveShare();
            wetSum += panel.areaM2() * panel.kind().wetLongWaveShare();
        }
        throughWPerK = conductance;
        dryShare = dry / coverM2;
        wetShare = wetSum / coverM2;
    }

    void solve(double airNowC, double massNowC, double humidityNow, double waterKg, double frostKg, double atS) {
        airC = airNowC;
        massC = massNowC;
        humidity = humidityNow;
        double lyingKg = Math.max(0, waterKg) + Math.max(0, frostKg);
        double wetKg = WET_KG_PER_M2 * coverM2;
        wet = Math.min(1, lyingKg / wetKg);
        waterCover = Math.max(0, Math.min(1, waterKg / wetKg));
        frostCover = Math.max(0, Math.min(1, frostKg / wetKg));
        frostOfAll = lyingKg > 0 ? Math.max(0, frostKg) / lyingKg : 0;
        double passes = dryShare + wet * (wetShare - dryShare);
        emits = EMISSIVITY * (1 - passes);
        outsideC = ColdNight.airC(atS);
        skyC = ColdNight.skyC(atS);
        windWPerM2K = 2.8 + 3.0 * ColdNight.windMPerS(atS);
        double low = -60;
        double high = 60;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (surplusW(middle) > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        surplusW((low + high) / 2);
        double seenC = SKY_VIEW * skyC + (1 - SKY_VIEW) * outsideC;
        fromMassW += floorM2 * EMISSIVITY * passes * SIGMA * (fourth(massC) - fourth(seenC));
    }

    /** What the inner surface gets beyond what it gives, W; falls with its temperature. Leaves the flows behind. */
    private double surplusW(double filmC) {
        double saturation = TunnelEquations.saturated(Saturation.overSurfacePa(filmC));
        double inside = INSIDE_W_PER_M2K * coverM2;
        boolean takes = humidity > saturation;
        settlesKgPerS = inside / AirConstants.DRY_AIR_HEAT_J_PER_KG_K * (takes ? 1 : wet) * (humidity - saturation);
        frostPart = takes ? 0 : frostOfAll;
        freezingW = -ICE_W_PER_M2K * coverM2 * (filmC < 0 ? waterCover : frostCover) * filmC;
        fromAirW = inside * (airC - filmC);
        fromMassW = floorM2 * emits * SIGMA * (fourth(massC) - fourth(filmC));
        double latentW = (Latent.vaporisationJPerKg(filmC) + frostPart * FUSION) * settlesKgPerS;
        return fromAirW + fromMassW + latentW + freezingW - throughWPerK * (filmC - outerC(filmC));
    }

    /** The outer surface, by Newton. */
    private double outerC(double filmC) {
        double outer = outsideC;
        for (int i = 0; i < 6; i++) {
            double kelvin = outer + AirConstants.ZERO_CELSIUS_K;
            double surplus = throughWPerK * (filmC - outer) - lossW(outer);
            double slope = throughWPerK + coverM2 * (windWPerM2K + 4 * emits * SIGMA * kelvin * kelvin * kelvin);
            outer += surplus / slope;
        }
        return outer;
    }

    private double lossW(double outer) {
        double toSky = SKY_VIEW * (fourth(outer) - fourth(skyC));
        double toGround = (1 - SKY_VIEW) * (fourth(outer) - fourth(outsideC));
        return coverM2 * (emits * SIGMA * (toSky + toGround) + windWPerM2K * (outer - outsideC));
    }

    private static double fourth(double celsius) {
        double kelvin = celsius + AirConstants.ZERO_CELSIUS_K;
        return kelvin * kelvin * kelvin * kelvin;
    }
}
