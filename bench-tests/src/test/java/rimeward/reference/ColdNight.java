package rimeward.reference;

import rimeward.air.MoistAir;
import rimeward.air.RelativeHumidity;
import rimeward.sim.physics.Tunnel;

/** A made-up smooth night that falls from 1 to about −6 °C with breathing wind; invented, so only fit to compare two ways of solving. */
final class ColdNight {
    static final double PRESSURE_PA = MoistAir.pressurePa(310);

    private ColdNight() {}

    static double airC(double atS) {
        double hours = atS / 3600;
        return 1 - 0.5 * hours + 0.4 * StrictMath.sin(2 * hours);
    }

    static double humidityKgPerKg(double atS) {
        return MoistAir.humidityRatioKgPerKg(RelativeHumidity.vapourFromOverWaterPa(airC(atS), 92), PRESSURE_PA);
    }

    static double windMPerS(double atS) {
        return 1.5 + StrictMath.sin(3.1 * atS / 3600);
    }

    static double skyC(double atS) {
        return airC(atS) - 8;
    }

    static void show(Tunnel tunnel, double atS) {
        tunnel.outside().set(airC(atS), humidityKgPerKg(atS), PRESSURE_PA, windMPerS(atS), skyC(atS), 0);
    }
}
