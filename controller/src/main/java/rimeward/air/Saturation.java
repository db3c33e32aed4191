package rimeward.air;

/**
 * Saturation pressure of water vapour, fast and the same to the last bit everywhere. Temperatures °C, pressures Pa.
 *
 * <p>Read from a table made of {@link HylandWexler} when the class loads. Between −60 and 90 °C the pressures are within 1e-7 of the
 * formula (relative) and the slopes, which are the exact derivatives of the tabulated curve, within 1e-6. A temperature outside is the
 * caller's mistake and is answered with the value at the nearer end.
 */
public final class Saturation {

    static final PressureCurve WATER = new PressureCurve(HylandWexler::overWaterPa, HylandWexler::overWaterSlopePaPerK);
    static final PressureCurve ICE = new PressureCurve(HylandWexler::overIcePa, HylandWexler::overIceSlopePaPerK);

    private Saturation() {}

    /** Over liquid water, Pa; supercooled below 0 °C. */
    public static double overWaterPa(double tC) {
        return WATER.pressurePa(tC);
    }

    /** Over ice, Pa; without meaning above 0 °C, where it only continues smoothly. */
    public static double overIcePa(double tC) {
        return ICE.pressurePa(tC);
    }

    /** Over a surface that freezes below 0 °C: ice below, water at and above, Pa. The two differ by 1e-4 at 0 °C. */
    public static double overSurfacePa(double tC) {
        return (tC < 0 ? ICE : WATER).pressurePa(tC);
    }

    /** Derivative of {@link #overWaterPa}, Pa/K. */
    public static double overWaterSlopePaPerK(double tC) {
        return WATER.slopePaPerK(tC);
    }

    /** Derivative of {@link #overIcePa}, Pa/K. */
    public static double overIceSlopePaPerK(double tC) {
        return ICE.slopePaPerK(tC);
    }

    /** Derivative of {@link #overSurfacePa}, Pa/K; from the right at 0 °C, where it jumps. */
    public static double overSurfaceSlopePaPerK(double tC) {
        return (tC < 0 ? ICE : WATER).slopePaPerK(tC);
    }
}
