package rimeward.sim.physics;

import rimeward.air.AirConstants;
import rimeward.air.Latent;
import rimeward.air.MoistAir;

/**
 * Lays what heat and water can do into {@link SixNodes}, and reads the flows back. For one
 * thread.
 */
final class Balance {
    private static final double AIR_J_PER_KG_K = AirConstants.DRY_AIR_HEAT_J_PER_KG_K;

    /** Convection at leaves and pots, W/(m² K): half of a free wall's, because they shelter one another (common practice, no source). */
    private static final double LEAF_W_PER_M2K = 2.0;

    /** Between water that freezes, or ice that melts, and the film it lies on, W/(m² K) (common practice, no source). */
    private static final double ICE_W_PER_M2K = 30;

    /** The medium evaporates freely until its water has sunk to this share of full (common practice, no source). */
    private static final double FREE_SHARE = 0.3;

    static final double FUSION_J_PER_KG = Latent.sublimationJPerKg(0) - Latent.vaporisationJPerKg(0);

    private final TunnelParameters tunnel;
    private final SixNodes nodes;
    private final Cover cover;
    private final WetSurface film = new WetSurface();
    private final WetSurface medium = new WetSurface();
    private final double dryAirKg;
    private final double dryAirKgPerM3;
    private final double filmKgPerS;
    private final double mediumKgPerS;
    private final double freeMediumKg;
    private final double iceFullWPerK;

    private boolean filmTakes;
    private double filmWetShare;
    private double frostShare;
    private double iceWPerK;
    private double leakKgPerS;
    private double collectionJPerKg;

    Balance(TunnelParameters tunnel, HeaterParameters heater, DryerCase dryer) {
        this.tunnel = tunnel;
        cover = new Cover(tunnel);
        dryAirKgPerM3 = MoistAir.densityKgPerM3(5, 0.004, MoistAir.pressurePa(tunnel.altitudeM()));
        dryAirKg = dryAirKgPerM3 * tunnel.volumeM3();
        filmKgPerS = cover.insideWPerK / AIR_J_PER_KG_K;
        mediumKgPerS = tunnel.wetM2() * LEAF_W_PER_M2K / AIR_J_PER_KG_K;
        iceFullWPerK = ICE_W_PER_M2K * tunnel.coverM2();
        freeMediumKg = FREE_SHARE * tunnel.mediumFullKg();
        nodes = new SixNodes(heater.elementJPerK(), dryer.innerJPerK(), dryAirKg, tunnel.massJPerK(), airJPerK());
    }

    double dryAirKg() {
        return dryAirKg;
    }

    /** Of the dry air; its mass is taken as constant, and the vapour's own heat capacity is left out. */
    double airJPerK() {
        return dryAirKg * AIR_J_PER_KG_K + tunnel.quickJPerK();
    }

    /** Freezes what changes slowly, at the beginning of a step. */
    void freeze(State now, Outside outside, Openings openings) {
        cover.lay(now, outside);
        freezeFilm(now, outside.pressurePa);
        medium.tangent(now.massC, false, outside.pressurePa);
        double freeShare = freeMediumKg > 0 ? Math.min(1, now.mediumWaterKg / freeMediumKg) : 0;
        medium.conductance(
                mediumKgPerS, freeShare, medium.takesFrom(now.humidityKgPerKg), Latent.vaporisationJPerKg(now.massC));
        leakKgPerS = dryAirKgPerM3 * openings.m3PerS(now.airC - outside.airC, outside.windMPerS);
        collectionJPerKg = Latent.vaporisationJPerKg(now.airC);
    }

    /**
     * Vapour settles as water, which then freezes if the film is cold: together that is the heat of deposition. What evaporates comes
     * from water and frost as they lie. So nothing jumps at 0 °C, where the film may stay for hours.
     */
    private void freezeFilm(State now, double pressurePa) {
        boolean frozen = now.filmC < 0;
        film.tangent(now.filmC, frozen, pressurePa);
        double lyingKg = now.filmWaterKg + now.filmFrostKg;
        filmWetShare = cover.wetShare(lyingKg);
        frostShare = now.filmFrostKg > 0 ? now.filmFrostKg / lyingKg : 0;
        settleOnFilm(now, film.takesFrom(now.humidityKgPerKg));
        double turningKg = frozen ? now.filmWaterKg : now.filmFrostKg;
        iceWPerK = iceFullWPerK * cover.wetShare(turningKg);
    }

    private void settleOnFilm(State now, boolean settles) {
        filmTakes = settles;
        double fusionJPerKg = settles ? 0 : frostShare * FUSION_J_PER_KG;
        film.conductance(filmKgPerS, filmWetShare, settles, Latent.vaporisationJPerKg(now.filmC) + fusionJPerKg);
    }

    /**
     * Lets the film give no more than it has and leaves ice and water on it as they are, for a step in which the film's temperature or
     * the direction of its vapour turned out otherwise than the step before had promised.
     */
    void guardFilm(State now) {
        iceWPerK = 0;
        settleOnFilm(now, false);
    }

    void solve(State now, Outside outside, Heater heater, Dryer dryer, double stepS) {
        layHeat(outside, heater, dryer);
        layWater(outside, dryer);
        nodes.step(now, stepS);
    }

    private void layHeat(Outside outside, Heater heater, Dryer dryer) {
        double massAirWPerK = tunnel.massAirWPerK();
        double leakWPerK = leakKgPerS * AIR_J_PER_KG_K;
        nodes.intoElement = heater.powerW();
        nodes.elementToAir = heater.elementWPerK();
        nodes.intoDryer = dryer.powerW - FUSION_J_PER_KG * dryer.meltKgPerS;
        nodes.dryerToAir = dryer.innerWPerK;
        nodes.intoFilm = cover.outsideWPerK * cover.outsideC; // the ice on it is at 0 °C and brings no term of its own
        nodes.filmOfFilm = cover.insideWPerK + cover.massWPerK + cover.outsideWPerK + iceWPerK;
        nodes.filmOfMass = nodes.massOfFilm = -cover.massWPerK;
        nodes.filmOfAir = nodes.airOfFilm = -cover.insideWPerK;
        nodes.intoMass = tunnel.groundWPerK() * tunnel.deepSoilC()
                + cover.skyWPerK * cover.skyC
                + tunnel.sunToMassShare() * cover.sunW;
        nodes.massOfMass = cover.massWPerK + massAirWPerK + tunnel.groundWPerK() + cover.skyWPerK;
        nodes.massOfAir = nodes.airOfMass = -massAirWPerK;
        nodes.intoAir = (1 - tunnel.sunToMassShare()) * cover.sunW + leakWPerK * outside.airC;
        nodes.airOfAir = cover.insideWPerK + massAirWPerK + leakWPerK;
    }

    private void layWater(Outside outside, Dryer dryer) {
        nodes.intoVapour = film.givesAnywayKgPerS()
                + medium.givesAnywayKgPerS()
                + leakKgPerS * outside.humidityKgPerKg
                + dryer.takesKgPerS * dryer.residueKgPerKg;
        nodes.vapourOfVapour = film.conductanceKgPerS() + medium.conductanceKgPerS() + leakKgPerS + dryer.takesKgPerS;
        nodes.vapourOfFilm = -film.givesKgPerSK();
        nodes.vapourOfMass = -medium.givesKgPerSK();
        nodes.filmOfVapour = -film.latentJPerKg() * film.conductanceKgPerS();
        nodes.filmOfFilm += film.latentJPerKg() * film.givesKgPerSK();
        nodes.intoFilm -= film.latentJPerKg() * film.givesAnywayKgPerS();
        nodes.massOfVapour = -medium.latentJPerKg() * medium.conductanceKgPerS();
        nodes.massOfMass += medium.latentJPerKg() * medium.givesKgPerSK();
        nodes.intoMass -= medium.latentJPerKg() * medium.givesAnywayKgPerS();
        double latentWPerKgPerKg = dryer.takesKgPerS * coilJPerKg(dryer);
        nodes.dryerOfVapour = -latentWPerKgPerKg;
        nodes.intoDryer -= latentWPerKgPerKg * dryer.residueKgPerKg;
    }

    private double coilJPerKg(Dryer dryer) {
        return collectionJPerKg + dryer.freezeShare * FUSION_J_PER_KG;
    }

    /** What the outside air that came in took for each kelvin, W/K. */
    double leakWPerK() {
        return leakKgPerS * AIR_J_PER_KG_K;
    }

    void read(Flows flows, Outside outside, Heater heater, Dryer dryer) {
        double airC = nodes.airC;
        double massC = nodes.massC;
        double filmC = nodes.filmC;
        double humidity = nodes.humidityKgPerKg;
        flows.heaterW = heater.powerW();
        flows.dryerW = dryer.powerW;
        flows.elementToAirW = heater.elementWPerK() * (nodes.elementC - airC);
        flows.dryerToAirW = dryer.innerWPerK * (nodes.dryerC - airC);
        flows.airToFilmW = cover.insideWPerK * (airC - filmC);
        flows.airToMassW = tunnel.massAirWPerK() * (airC - massC);
        flows.massToFilmW = cover.massWPerK * (massC - filmC);
        flows.leakW = leakKgPerS * AIR_J_PER_KG_K * (outside.airC - airC);
        flows.groundW = tunnel.groundWPerK() * (tunnel.deepSoilC() - massC);
        flows.skyW = cover.skyWPerK * (cover.skyC - massC);
        flows.coverW = cover.outsideWPerK * (cover.outsideC - filmC);
        flows.sunToMassW = tunnel.sunToMassShare() * cover.sunW;
        flows.sunToAirW = (1 - tunnel.sunToMassShare()) * cover.sunW;
        flows.leakKgPerS = leakKgPerS * (outside.humidityKgPerKg - humidity);
        readFilm(flows, humidity, filmC);
        readMachines(flows, humidity, massC, dryer);
    }

    private void readFilm(Flows flows, double humidity, double filmC) {
        flows.frostShare = filmTakes ? 0 : frostShare;
        flows.condensationKgPerS = film.settlesKgPerS(humidity, filmC);
        flows.condensationW = film.latentJPerKg() * flows.condensationKgPerS;
        flows.freezingW = -iceWPerK * filmC;
        flows.freezingKgPerS = flows.freezingW / FUSION_J_PER_KG;
    }

    private void readMachines(Flows flows, double humidity, double massC, Dryer dryer) {
        flows.evaporationKgPerS = -medium.settlesKgPerS(humidity, massC);
        flows.evaporationW = medium.latentJPerKg() * flows.evaporationKgPerS;
        flows.collectionKgPerS = dryer.takesKgPerS * (humidity - dryer.residueKgPerKg);
        flows.collectionW = coilJPerKg(dryer) * flows.collectionKgPerS;
        flows.coilFreezingKgPerS = dryer.freezeShare * flows.collectionKgPerS;
        flows.coilMeltKgPerS = dryer.meltKgPerS;
        flows.meltW = FUSION_J_PER_KG * dryer.meltKgPerS;
    }

    double filmC() {
        return nodes.filmC;
    }

    double filmOutsideC() {
        return cover.outerSurfaceC(nodes.filmC);
    }

    /** Where something that follows the air with a time constant ends the step, °C. */
    double followsAirC(double now, double timeConstantS) {
        return nodes.followsAirC(now, timeConstantS);
    }
}
