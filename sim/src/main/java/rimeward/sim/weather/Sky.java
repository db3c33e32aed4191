package rimeward.sim.weather;

/** Long-wave radiation of the sky. Temperatures in °C, vapour pressure in Pa, emissivities 0…1. */
public final class Sky {
    private static final double KELVIN = 273.15;

    private Sky() {}

    /**
     * Clear-sky emissivity from vapour pressure: Brunt's form with the coefficients of Li, Jiang &amp; Coimbra, Solar Energy
     * 144 (2017) 40–48.
     */
    public static double bruntEmissivity(double vapourPa) {
        return 0.618 + 0.056 * Math.sqrt(vapourPa / 100);
    }

    /**
     * Clear-sky emissivity from the dew point: Berdahl–Martin's form with the coefficients of Li, Jiang &amp; Coimbra
     * (2017).
     */
    public static double berdahlMartinEmissivity(double dewPointC) {
        double x = dewPointC / 100;
        return 0.758 + 0.521 * x + 0.625 * x * x;
    }

    /**
     * Emissivity of a sky partly covered by cloud, which itself is taken as black and a little colder than the air below.
     *
     * <p>Source: Unsworth &amp; Monteith, Quart. J. Roy. Met. Soc. 101 (1975) 13–24.
     */
    public static double emissivityUnderCloud(double clearEmissivity, double cloudFraction) {
        return clearEmissivity * (1 - 0.84 * cloudFraction) + 0.84 * cloudFraction;
    }

    /** Temperature of a black sky that sends down as much as a grey one of this emissivity at air temperature. */
    public static double blackSkyC(double airC, double emissivity) {
        return (airC + KELVIN) * Math.sqrt(Math.sqrt(emissivity)) - KELVIN;
    }

    /** Effective sky temperature from what a weather record tells: Brunt's emissivity, corrected for cloud. */
    public static double skyC(double airC, double vapourPa, double cloudFraction) {
        return blackSkyC(airC, emissivityUnderCloud(bruntEmissivity(vapourPa), cloudFraction));
    }

    /**
     * Net long-wave loss of a grass surface over a whole day, MJ/m², to hold the sky against an independent rule.
     *
     * <p>Source: FAO Irrigation and Drainage Paper 56 (1998), eq. 39.
     *
     * @param relativeSunshine measured over clear-sky solar radiation of the day, 0.3…1
     */
    public static double dailyNetLossMJPerM2(
            double lowestC, double highestC, double vapourPa, double relativeSunshine) {
        double meanT4 = (fourthPower(lowestC + 273.16) + fourthPower(highestC + 273.16)) / 2;
        double humidity = 0.34 - 0.14 * Math.sqrt(vapourPa / 1000);
        return 4.903e-9 * meanT4 * humidity * (1.35 * relativeSunshine - 0.35);
    }

    private static double fourthPower(double x) {
        return x * x * x * x;
    }
}
