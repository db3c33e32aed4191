package rimeward.air;

/**
 * Saturation pressure of water vapour by the formulas of Hyland and Wexler (1983), as printed in ASHRAE Fundamentals 2017, ch. 1, eq. 5
 * (ice) and 6 (water): the definition that {@link Saturation} tabulates. Temperatures °C, pressures Pa.
 *
 * <p>Slow on purpose: {@link StrictMath} gives the same bits everywhere. Stated ranges: ice −100…0 °C, water 0…200 °C. Below 0 °C the
 * water formula is extrapolated to supercooled water; it stays within 0.5 % of the WMO-No. 8 formula down to −40 °C. The ice formula
 * above 0 °C has no meaning and is only continued smoothly.
 */
public final class HylandWexler {

    private HylandWexler() {}

    /** Over liquid water, Pa; supercooled below 0 °C. */
    public static double overWaterPa(double tC) {
        double k = tC + AirConstants.ZERO_CELSIUS_K;
        double polynomial = 1.3914993 + k * (-4.8640239e-2 + k * (4.1764768e-5 + k * -1.4452093e-8));
        return StrictMath.exp(-5.8002206e3 / k + polynomial + 6.5459673 * StrictMath.log(k));
    }

    /** Over ice, Pa. */
    public static double overIcePa(double tC) {
        double k = tC + AirConstants.ZERO_CELSIUS_K;
        double cubic = 6.2215701e-7 + k * (2.0747825e-9 + k * -9.4840240e-13);
        double polynomial = 6.3925247 + k * (-9.6778430e-3 + k * cubic);
        return StrictMath.exp(-5.6745359e3 / k + polynomial + 4.1635019 * StrictMath.log(k));
    }

    /** Derivative of {@link #overWaterPa}, Pa/K. */
    public static double overWaterSlopePaPerK(double tC) {
        double k = tC + AirConstants.ZERO_CELSIUS_K;
        double polynomial = -4.8640239e-2 + k * (2 * 4.1764768e-5 + k * 3 * -1.4452093e-8);
        return overWaterPa(tC) * (5.8002206e3 / (k * k) + polynomial + 6.5459673 / k);
    }

    /** Derivative of {@link #overIcePa}, Pa/K. */
    public static double overIceSlopePaPerK(double tC) {
        double k = tC + AirConstants.ZERO_CELSIUS_K;
        double quadratic = 2 * 6.2215701e-7 + k * (3 * 2.0747825e-9 + k * 4 * -9.4840240e-13);
        return overIcePa(tC) * (5.6745359e3 / (k * k) - 9.6778430e-3 + k * quadratic + 4.1635019 / k);
    }
}
