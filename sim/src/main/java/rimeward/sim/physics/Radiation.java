package rimeward.sim.physics;

import rimeward.air.AirConstants;

/** Long-wave exchange between black surfaces. */
final class Radiation {
    /** Stefan–Boltzmann constant, W/(m² K⁴); CODATA 2018, exact. */
    private static final double STEFAN_BOLTZMANN = 5.670374419e-8;

    private Radiation() {}

    /** σ (T₁⁴ − T₂⁴) / (T₁ − T₂), W/(m² K): exact at these temperatures, and slow to change with them. */
    static double wPerM2K(double oneC, double otherC) {
        double one = oneC + AirConstants.ZERO_CELSIUS_K;
        double other = otherC + AirConstants.ZERO_CELSIUS_K;
        return STEFAN_BOLTZMANN * (one * one + other * other) * (one + other);
    }
}
