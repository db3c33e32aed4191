package rimeward.sim.physics;

import rimeward.air.AirConstants;
import rimeward.air.MoistAir;
import rimeward.air.Saturation;

/**
 * A surface that gives vapour to the air or takes it, with saturation as a tangent about the surface's last temperature; for one
 * thread. Mass goes with heat by the Lewis relation: convection over the specific heat of air, per unit of humidity ratio.
 */
final class WetSurface {
    private double conductanceKgPerS;
    private double saturationKgPerKg;
    private double slopePerK;
    private double aboutC;
    private double latentJPerKg;

    /** Sets the tangent, over ice or over water. */
    void tangent(double surfaceC, boolean overIce, double pressurePa) {
        double vapourPa = overIce ? Saturation.overIcePa(surfaceC) : Saturation.overWaterPa(surfaceC);
        double paPerK = overIce ? Saturation.overIceSlopePaPerK(surfaceC) : Saturation.overWaterSlopePaPerK(surfaceC);
        double perDryPa = 1 / (pressurePa - vapourPa);
        double ratioPerPa = AirConstants.VAPOUR_TO_DRY_AIR_MASS * perDryPa;
        aboutC = surfaceC;
        saturationKgPerKg = ratioPerPa * vapourPa;
        slopePerK = ratioPerPa * pressurePa * perDryPa * paPerK;
    }

    /** Whether vapour of this humidity ratio would settle on the surface. */
    boolean takesFrom(double humidityKgPerKg) {
        return humidityKgPerKg > saturationKgPerKg;
    }

    /**
     * @param fullKgPerS kg/s per unit of humidity ratio when vapour settles, or when the whole surface is wet
     * @param wetShare how much of the surface is wet: what is dry takes vapour, but gives none
     */
    void conductance(double fullKgPerS, double wetShare, boolean takes, double latentJPerKg) {
        this.latentJPerKg = latentJPerKg;
        conductanceKgPerS = takes ? fullKgPerS : fullKgPerS * wetShare;
    }

    double conductanceKgPerS() {
        return conductanceKgPerS;
    }

    /** How much more vapour it gives for each kelvin that it is warmer, kg/(s K). */
    double givesKgPerSK() {
        return conductanceKgPerS * slopePerK;
    }

    /** What it would give at 0 °C to air without vapour, by the tangent, kg/s. */
    double givesAnywayKgPerS() {
        return conductanceKgPerS * (saturationKgPerKg - slopePerK * aboutC);
    }

    /** Vapour that settles, negative when it evaporates, kg/s. */
    double settlesKgPerS(double humidityKgPerKg, double surfaceC) {
        return conductanceKgPerS * (humidityKgPerKg - saturationKgPerKg - slopePerK * (surfaceC - aboutC));
    }

    double latentJPerKg() {
        return latentJPerKg;
    }

    /** Humidity ratio of air saturated over water at this temperature. */
    static double saturatedKgPerKg(double airC, double pressurePa) {
        return MoistAir.humidityRatioKgPerKg(Saturation.overWaterPa(airC), pressurePa);
    }
}
