package rimeward.sim.physics;

/**
 * Air that passes through gaps, driven by wind and by warmth.
 *
 * <p>Source: Sherman &amp; Grimsrud (1980), in the form of ASHRAE Fundamentals (basic model, effective leakage area at 4 Pa), with
 * the coefficients of a one-storey building behind some shelter (class 3); from memory.
 */
final class Leakage {
    /** (L/s)²/(cm⁴ K). */
    private static final double STACK = 0.000145;
    /** (L/s)²/(cm⁴ (m/s)²). */
    private static final double WIND = 0.000174;

    private static final double M3_PER_L = 0.001;

    private Leakage() {}

    static double m3PerS(double areaCm2, double liftK, double windMPerS) {
        return M3_PER_L * areaCm2 * Math.sqrt(STACK * Math.abs(liftK) + WIND * windMPerS * windMPerS);
    }
}
