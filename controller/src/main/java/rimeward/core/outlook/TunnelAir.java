package rimeward.core.outlook;

import rimeward.air.MoistAir;
import rimeward.air.RelativeHumidity;
import rimeward.air.Saturation;

/**
 * Air, mass and damp of a tunnel as {@link rimeward.core.tunnel.TunnelEstimate} describes them, stepped implicitly: stable at any
 * step, and what is given, lost and stored in a step adds up to nothing. For one thread.
 */
final class TunnelAir {
    private final World world;
    private final double pressurePa;
    private final double dryAirKg;
    private final double airPerS; // J/K of the air over the step
    private final double massPerS;
    private final double stepS;
    private double airC;
    private double massC;
    private double humidityKgPerKg;
    private double undriedKgPerKg; // as damp as the air would be had no dryer ever run

    TunnelAir(World world, double volumeM3, double pressurePa, double stepS, double airC, double massC) {
        this.world = world;
        this.pressurePa = pressurePa;
        this.stepS = stepS;
        this.airC = airC;
        this.massC = massC;
        airPerS = world.airCapacityJPerK() / stepS;
        massPerS = world.massCapacityJPerK() / stepS;
        dryAirKg = volumeM3 * MoistAir.densityKgPerM3(airC, 0, pressurePa);
    }

    double airC() {
        return airC;
    }

    double massC() {
        return massC;
    }

    double humidityKgPerKg() {
        return humidityKgPerKg;
    }

    void setRh(double rhPercent) {
        humidityKgPerKg = saturatedKgPerKg(airC) * rhPercent / 100;
        undriedKgPerKg = humidityKgPerKg;
    }

    /** The damp at which wetting and exchange are in balance. */
    void setDampInBalance(double outsideKgPerKg) {
        double bothKgPerS = world.wettingKgPerS() + world.airExchangeKgPerS();
        double balanced = (world.wettingKgPerS() * saturatedKgPerKg(massC) + world.airExchangeKgPerS() * outsideKgPerKg)
                / bothKgPerS;
        humidityKgPerKg = StrictMath.min(saturatedKgPerKg(airC), balanced);
        undriedKgPerKg = humidityKgPerKg;
    }

    /** The air at the end of a step with this heat, °C. */
    double airAfterC(double outsideC, double heatW) {
        double passedOn = world.massCouplingWPerK() / (massPerS + world.massCouplingWPerK());
        double fromMassW = passedOn * (massPerS * massC + world.groundW());
        return (airPerS * airC + world.heatLossWPerK() * outsideC + heatW + fromMassW) / conductanceWPerK();
    }

    /** Heat through a step that brings the air to this temperature by its end, W; negative where it would have to be cooled. */
    double heatToReachW(double targetC, double outsideC) {
        return (targetC - airAfterC(outsideC, 0)) * conductanceWPerK();
    }

    /** Heat that holds the air this warm against outside and this mass, W; negative where none is needed. */
    double heatToHoldW(double holdC, double outsideC) {
        return world.heatLossWPerK() * (holdC - outsideC) + world.massCouplingWPerK() * (holdC - massC);
    }

    private double conductanceWPerK() {
        double coupling = world.massCouplingWPerK();
        return airPerS + world.heatLossWPerK() + coupling - coupling * coupling / (massPerS + coupling);
    }

    void step(double outsideC, double outsideKgPerKg, double heatW, double collectedKgPerS) {
        airC = airAfterC(outsideC, heatW);
        massC = (massPerS * massC + world.massCouplingWPerK() * airC + world.groundW())
                / (massPerS + world.massCouplingWPerK());
        humidityKgPerKg = damperKgPerKg(humidityKgPerKg, outsideKgPerKg, collectedKgPerS);
        undriedKgPerKg = damperKgPerKg(undriedKgPerKg, outsideKgPerKg, 0);
    }

    private double damperKgPerKg(double beforeKgPerKg, double outsideKgPerKg, double collectedKgPerS) {
        double keptKgPerS = dryAirKg / stepS;
        double inKgPerS = keptKgPerS * beforeKgPerKg
                + world.wettingKgPerS() * saturatedKgPerKg(massC)
                + world.airExchangeKgPerS() * outsideKgPerKg
                - collectedKgPerS;
        double next = inKgPerS / (keptKgPerS + world.wettingKgPerS() + world.airExchangeKgPerS());
        return StrictMath.max(0, StrictMath.min(saturatedKgPerKg(airC), next)); // the rest drips
    }

    /** The same of air that was never dried, %. */
    double undriedPercent(double atC) {
        return StrictMath.min(
                100, RelativeHumidity.overWaterPercent(atC, MoistAir.vapourPa(undriedKgPerKg, pressurePa)));
    }

    /** Relative humidity over water where it is this warm, %. */
    double rhPercent(double atC) {
        return StrictMath.min(100, RelativeHumidity.overWaterPercent(atC, vapourPa()));
    }

    double dewPointC() {
        return MoistAir.dewPointC(vapourPa());
    }

    private double vapourPa() {
        return MoistAir.vapourPa(humidityKgPerKg, pressurePa);
    }

    private double saturatedKgPerKg(double atC) {
        return MoistAir.humidityRatioKgPerKg(Saturation.overWaterPa(atC), pressurePa);
    }
}
