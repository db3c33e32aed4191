package rimeward.sim.physics;

/** Moves the state by what flowed: the only place where heat and water arrive. For one thread. */
final class Lumps {
    private final double airKPerJ;
    private final double massKPerJ;
    private final double elementKPerJ;
    private final double dryerKPerJ;
    private final double perDryAirKg;
    private final double dialLagS;
    private final double humidistatLagS;

    Lumps(TunnelParameters tunnel, Balance balance, HeaterParameters heater, DryerCase dryer) {
        airKPerJ = 1 / balance.airJPerK();
        massKPerJ = 1 / tunnel.massJPerK();
        elementKPerJ = 1 / heater.elementJPerK();
        dryerKPerJ = 1 / dryer.innerJPerK();
        perDryAirKg = 1 / balance.dryAirKg();
        dialLagS = heater.dial().lagS();
        humidistatLagS = dryer.humidistat().lagS();
    }

    void carry(State now, Flows flows, State next, double stepS) {
        next.airC = now.airC
                + stepS
                        * airKPerJ
                        * (flows.elementToAirW
                                + flows.dryerToAirW
                                + flows.sunToAirW
                                + flows.leakW
                                - flows.airToFilmW
                                - flows.airToMassW);
        next.massC = now.massC
                + stepS
                        * massKPerJ
                        * (flows.airToMassW
                                + flows.groundW
                                + flows.skyW
                                + flows.sunToMassW
                                - flows.massToFilmW
                                - flows.evaporationW);
        next.elementC = now.elementC + stepS * elementKPerJ * (flows.heaterW - flows.elementToAirW);
        next.dryerC =
                now.dryerC + stepS * dryerKPerJ * (flows.dryerW + flows.collectionW - flows.dryerToAirW - flows.meltW);
        carryWater(now, flows, next, stepS);
    }

    private void carryWater(State now, Flows flows, State next, double stepS) {
        next.humidityKgPerKg = now.humidityKgPerKg
                + stepS
                        * perDryAirKg
                        * (flows.evaporationKgPerS
                                + flows.leakKgPerS
                                - flows.condensationKgPerS
                                - flows.collectionKgPerS);
        double settlesKg = flows.condensationKgPerS * stepS;
        double freezesKg = flows.freezingKgPerS * stepS;
        next.filmWaterKg = now.filmWaterKg + (1 - flows.frostShare) * settlesKg - freezesKg;
        next.filmFrostKg = now.filmFrostKg + flows.frostShare * settlesKg + freezesKg;
        next.mediumWaterKg = now.mediumWaterKg - flows.evaporationKgPerS * stepS;
        double coilKg = (flows.coilFreezingKgPerS - flows.coilMeltKgPerS) * stepS;
        next.coilIceKg = now.coilIceKg + coilKg;
        next.tankKg = now.tankKg + flows.collectionKgPerS * stepS - coilKg;
    }

    /** Lets bimetal and humidistat follow what they feel. */
    void follow(State now, State next, Balance balance, double stepS) {
        next.bimetalC = balance.followsAirC(now.bimetalC, dialLagS);
        double x = stepS / humidistatLagS;
        double meanPercent = (now.rhPercent() + next.rhPercent()) / 2;
        next.humidistatPercent = now.humidistatPercent + x / (1 + x / 2) * (meanPercent - now.humidistatPercent);
    }
}
