package rimeward.sim.physics;

import rimeward.air.AirConstants;
import rimeward.air.MoistAir;
import rimeward.air.RelativeHumidity;

/** Everything in the tunnel that has a memory, in °C, kg and kg/kg; for one thread. */
final class State {
    double airC;
    double massC;
    double elementC;
    double dryerC;
    double humidityKgPerKg;
    double filmWaterKg;
    double filmFrostKg;
    double mediumWaterKg;
    double tankKg;
    double coilIceKg;
    /** What the heater's bimetal and the dryer's humidistat feel: they lag. */
    double bimetalC;

    double humidistatPercent;

    /** No memory of their own: the cover's temperatures in the last step, about which the next is linearised. */
    double filmC;

    double filmOutsideC;

    /** Follows from the air; kept because each step needs it at both ends. */
    double saturationKgPerKg;

    /** Sets everything as a run begins: machines and cover as warm as the air. */
    void begin(StartState start, double pressurePa) {
        double vapourPa = RelativeHumidity.vapourFromOverWaterPa(start.airC(), start.rhPercent());
        airC = start.airC();
        massC = start.massC();
        elementC = start.airC();
        dryerC = start.airC();
        bimetalC = start.airC();
        filmC = start.airC();
        filmOutsideC = start.airC();
        humidityKgPerKg = MoistAir.humidityRatioKgPerKg(vapourPa, pressurePa);
        saturationKgPerKg = WetSurface.saturatedKgPerKg(start.airC(), pressurePa);
        humidistatPercent = start.rhPercent();
        mediumWaterKg = start.mediumWaterKg();
        tankKg = start.tankKg();
    }

    void copyFrom(State other) {
        airC = other.airC;
        massC = other.massC;
        elementC = other.elementC;
        dryerC = other.dryerC;
        humidityKgPerKg = other.humidityKgPerKg;
        filmWaterKg = other.filmWaterKg;
        filmFrostKg = other.filmFrostKg;
        mediumWaterKg = other.mediumWaterKg;
        tankKg = other.tankKg;
        coilIceKg = other.coilIceKg;
        bimetalC = other.bimetalC;
        humidistatPercent = other.humidistatPercent;
        filmC = other.filmC;
        filmOutsideC = other.filmOutsideC;
        saturationKgPerKg = other.saturationKgPerKg;
    }

    /**
     * Guesses the middle of the step to come from the step before, so that what is frozen there errs to second order only. Fills what
     * is needed for that.
     *
     * @param share half of the coming step over the whole of the one before
     */
    void guessMiddle(State before, State now, double share) {
        airC = now.airC + share * (now.airC - before.airC);
        massC = now.massC + share * (now.massC - before.massC);
        dryerC = now.dryerC + share * (now.dryerC - before.dryerC);
        filmC = now.filmC; // has no inertia: it may turn at any time, and a tangent about its last value is good enough
        filmOutsideC = now.filmOutsideC;
        humidityKgPerKg = ahead(before.humidityKgPerKg, now.humidityKgPerKg, share);
        saturationKgPerKg = ahead(before.saturationKgPerKg, now.saturationKgPerKg, share);
        filmWaterKg = ahead(before.filmWaterKg, now.filmWaterKg, share);
        filmFrostKg = ahead(before.filmFrostKg, now.filmFrostKg, share);
        mediumWaterKg = ahead(before.mediumWaterKg, now.mediumWaterKg, share);
        coilIceKg = ahead(before.coilIceKg, now.coilIceKg, share);
    }

    private static double ahead(double before, double now, double share) {
        double guess = now + share * (now - before);
        return guess < 0 ? 0 : guess;
    }

    /** Whether a step was so long that it took water where there was none. */
    boolean isOverdrawn() {
        return filmWaterKg < 0 || filmFrostKg < 0 || mediumWaterKg < 0 || coilIceKg < 0 || humidityKgPerKg < 0;
    }

    /** Relative humidity of the mean air over water, %: a ratio of pressures, so not that of the humidity ratios alone. */
    double rhPercent() {
        double dry = AirConstants.VAPOUR_TO_DRY_AIR_MASS;
        return 100 * humidityKgPerKg * (dry + saturationKgPerKg) / (saturationKgPerKg * (dry + humidityKgPerKg));
    }
}
