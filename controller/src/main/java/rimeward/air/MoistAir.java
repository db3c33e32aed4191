package rimeward.air;

/**
 * Relations between the quantities of moist air, from ASHRAE Fundamentals 2017, ch. 1 (equation numbers given). Temperatures °C,
 * pressures Pa, humidity ratios kg of vapour per kg of dry air. Relative humidities live in {@link RelativeHumidity}.
 */
public final class MoistAir {

    private static final PointCurve DEW = new PointCurve(HylandWexler::overWaterPa, HylandWexler::overWaterSlopePaPerK);
    private static final PointCurve FROST = new PointCurve(HylandWexler::overIcePa, HylandWexler::overIceSlopePaPerK);

    private MoistAir() {}

    /** Humidity ratio, kg/kg, of air with this vapour pressure at this total pressure (eq. 20). */
    public static double humidityRatioKgPerKg(double vapourPa, double pressurePa) {
        return AirConstants.VAPOUR_TO_DRY_AIR_MASS * vapourPa / (pressurePa - vapourPa);
    }

    /** Vapour pressure, Pa, of air with this humidity ratio at this total pressure (eq. 36). */
    public static double vapourPa(double humidityKgPerKg, double pressurePa) {
        return pressurePa * humidityKgPerKg / (AirConstants.VAPOUR_TO_DRY_AIR_MASS + humidityKgPerKg);
    }

    /**
     * Dew point, °C: where this vapour pressure saturates over water, also below 0 °C (as weather services report it). Within 1e-6 K
     * of {@link HylandWexler}; a pressure that saturates outside −60…90 °C gives the nearer end.
     */
    public static double dewPointC(double vapourPa) {
        return DEW.pointC(vapourPa);
    }

    /**
     * Frost point, °C: where this vapour pressure saturates over ice; has meaning up to 0 °C. Within 1e-6 K of {@link HylandWexler};
     * a pressure that saturates outside −60…90 °C gives the nearer end.
     */
    public static double frostPointC(double vapourPa) {
        return FROST.pointC(vapourPa);
    }

    /** Enthalpy, J per kg of dry air, above dry air and liquid water at 0 °C (eq. 30). */
    public static double enthalpyJPerKg(double airC, double humidityKgPerKg) {
        return AirConstants.DRY_AIR_HEAT_J_PER_KG_K * airC
                + humidityKgPerKg
                        * (AirConstants.VAPOUR_ENTHALPY_AT_ZERO_J_PER_KG + AirConstants.VAPOUR_HEAT_J_PER_KG_K * airC);
    }

    /**
     * Thermodynamic wet-bulb temperature, °C (eq. 33 over water, eq. 35 over ice). Where the air would allow both a wet bulb just
     * above 0 °C and an iced one just below, the wet one is given. Air at or above saturation gives {@code airC} itself.
     */
    public static double wetBulbC(double airC, double humidityKgPerKg, double pressurePa) {
        return WetBulb.solveC(airC, humidityKgPerKg, pressurePa);
    }

    /**
     * Density as kg of <em>dry air</em> per m³ of moist air (the reciprocal of eq. 26), which is what balances per kg of dry air need;
     * times (1 + humidity ratio) it is the density of the mixture.
     */
    public static double densityKgPerM3(double airC, double humidityKgPerKg, double pressurePa) {
        double kelvin = airC + AirConstants.ZERO_CELSIUS_K;
        return pressurePa / (AirConstants.DRY_AIR_GAS_J_PER_KG_K * kelvin * (1 + 1.607858 * humidityKgPerKg));
    }

    /** Pressure of the standard atmosphere, Pa, at an altitude between −5000 and 11000 m (eq. 3). Slow: once at start, not in a loop. */
    public static double pressurePa(double altitudeM) {
        return AirConstants.STANDARD_PRESSURE_PA * StrictMath.pow(1 - 2.25577e-5 * altitudeM, 5.2559);
    }
}
