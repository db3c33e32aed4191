package rimeward.air;

/**
 * Relative humidity in percent, with the surface it is measured against in every name, because below 0 °C the two conventions differ
 * (5 % at −5 °C): weather services and sensors report over <em>water</em> at all temperatures (WMO-No. 8), ASHRAE's tables
 * over <em>ice</em> below freezing. The program uses over water unless a name says otherwise. Temperatures °C, pressures Pa.
 */
public final class RelativeHumidity {

    private RelativeHumidity() {}

    /** Relative humidity over water, %, also below 0 °C; above 100 when supersaturated. */
    public static double overWaterPercent(double airC, double vapourPa) {
        return 100 * vapourPa / Saturation.overWaterPa(airC);
    }

    /** Relative humidity over ice, %; has meaning up to 0 °C. */
    public static double overIcePercent(double airC, double vapourPa) {
        return 100 * vapourPa / Saturation.overIcePa(airC);
    }

    /** Vapour pressure, Pa, of air with this relative humidity over water. */
    public static double vapourFromOverWaterPa(double airC, double rhPercent) {
        return rhPercent / 100 * Saturation.overWaterPa(airC);
    }

    /** Vapour pressure, Pa, from a relative humidity of the ASHRAE convention: over ice below 0 °C, over water from there on. */
    public static double vapourFromOverIceBelowFreezingPa(double airC, double rhPercent) {
        return rhPercent / 100 * Saturation.overSurfacePa(airC);
    }
}
