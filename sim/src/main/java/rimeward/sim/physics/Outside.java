package rimeward.sim.physics;

/** The weather about the tunnel, held constant over a step; for one thread. */
public final class Outside {
    double airC;
    double humidityKgPerKg;
    double pressurePa;
    double windMPerS;
    double skyC;
    double sunWPerM2;

    /**
     * @param airC −60…60 °C
     * @param humidityKgPerKg of the outside air
     * @param pressurePa at the place itself
     * @param windMPerS at 10 m
     * @param skyC of a black sky that sends down the same long-wave radiation
     * @param sunWPerM2 global radiation on a level surface
     */
    public void set(
            double airC, double humidityKgPerKg, double pressurePa, double windMPerS, double skyC, double sunWPerM2) {
        this.airC = airC;
        this.humidityKgPerKg = humidityKgPerKg;
        this.pressurePa = pressurePa;
        this.windMPerS = windMPerS;
        this.skyC = skyC;
        this.sunWPerM2 = sunWPerM2;
    }

    public double airC() {
        return airC;
    }

    public double humidityKgPerKg() {
        return humidityKgPerKg;
    }

    public double pressurePa() {
        return pressurePa;
    }
}
