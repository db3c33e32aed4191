package rimeward.sim.physics;

/**
 * The cover between inside and sky, as conductances frozen for one step: the outer surface is taken out by its own balance, so that
 * the inner one, on which water condenses, is all that remains. For one thread.
 */
final class Cover {
    /** Inside convection, W/(m² K), between EN ISO 6946's 5.0 for a ceiling and 2.5 for a wall. */
    static final double INSIDE_W_PER_M2K = 4.0;

    /** Outside convection 2.8 + 3.0 v, W/(m² K), without long-wave; Watmuff, Charters &amp; Proctor, COMPLES 2 (1977); from memory. */
    private static final double CALM_W_PER_M2K = 2.8;

    private static final double WIND_W_PER_M2K = 3.0;

    private static final double EMISSIVITY = 0.95;

    /** Share of what the cover sees that is sky; the rest is ground and hedges at air temperature (common practice, no source). */
    private static final double SKY_VIEW = 0.65;

    /** Sunshine kept out by drops (common practice, no source). */
    private static final double DROPS_SHADE = 0.07;

    /** Water that makes the cover count as wet all over (common practice, no source). */
    private static final double WET_KG_PER_M2 = 0.02;

    private final double coverM2;
    private final double floorM2;
    private final double throughCoverWPerK;
    private final double dryLongWaveShare;
    private final double wetLongWaveShare;
    private final double sunShare;

    final double insideWPerK;
    private final double wetKg;
    double massWPerK;
    double outsideWPerK;
    double outsideC;
    double skyWPerK;
    double skyC;
    double sunW;
    private double openWPerK;

    Cover(TunnelParameters tunnel) {
        double areaM2 = tunnel.coverM2();
        double conductance = 0;
        double dry = 0;
        double wet = 0;
        double sun = 0;
        for (Panel panel : tunnel.cover()) {
            CoverKind kind = panel.kind();
            conductance += panel.areaM2() / kind.resistanceM2KPerW();
            dry += panel.areaM2() / areaM2 * kind.dryLongWaveShare();
            wet += panel.areaM2() / areaM2 * kind.wetLongWaveShare();
            sun += panel.areaM2() / areaM2 * kind.sunShare();
        }
        coverM2 = areaM2;
        floorM2 = tunnel.floorM2();
        throughCoverWPerK = conductance;
        dryLongWaveShare = dry;
        wetLongWaveShare = wet;
        sunShare = sun;
        insideWPerK = INSIDE_W_PER_M2K * areaM2;
        wetKg = WET_KG_PER_M2 * areaM2;
    }

    /** Freezes the conductances at a state and a weather. */
    void lay(State now, Outside outside) {
        double wet = wetShare(now.filmWaterKg + now.filmFrostKg);
        double passes = dryLongWaveShare + wet * (wetLongWaveShare - dryLongWaveShare);
        double emits = EMISSIVITY * (1 - passes);
        massWPerK = floorM2 * emits * Radiation.wPerM2K(now.massC, now.filmC);
        double toSkyWPerK = coverM2 * SKY_VIEW * emits * Radiation.wPerM2K(now.filmOutsideC, outside.skyC);
        double toAirWPerK = coverM2
                * ((1 - SKY_VIEW) * emits * Radiation.wPerM2K(now.filmOutsideC, outside.airC)
                        + CALM_W_PER_M2K
                        + WIND_W_PER_M2K * outside.windMPerS);
        openWPerK = toSkyWPerK + toAirWPerK;
        outsideC = (toSkyWPerK * outside.skyC + toAirWPerK * outside.airC) / openWPerK;
        outsideWPerK = throughCoverWPerK * openWPerK / (throughCoverWPerK + openWPerK);
        skyC = SKY_VIEW * outside.skyC + (1 - SKY_VIEW) * outside.airC;
        skyWPerK = floorM2 * EMISSIVITY * passes * Radiation.wPerM2K(now.massC, skyC);
        sunW = floorM2 * sunShare * (1 - DROPS_SHADE * wet) * outside.sunWPerM2;
    }

    /** How much of it is wet with so much water or frost lying on it, 0…1. */
    double wetShare(double lyingKg) {
        return lyingKg < wetKg ? lyingKg / wetKg : 1;
    }

    /** Temperature of the outer surface when the inner one has this. */
    double outerSurfaceC(double filmC) {
        return (throughCoverWPerK * filmC + openWPerK * outsideC) / (throughCoverWPerK + openWPerK);
    }
}
