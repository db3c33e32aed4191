package rimeward.sim.weather;

/**
 * The middle of the sun's disc as seen from a place.
 *
 * @param elevationDeg height over the level horizon without refraction, negative below it
 * @param azimuthDeg direction clockwise from north, 0…360
 */
public record SunPosition(double elevationDeg, double azimuthDeg) {
    private static final double LOWEST_REFRACTED_DEG = -0.83337; // the upper limb touches the horizon

    /**
     * Height over the horizon as lifted by refraction in air of this pressure and temperature.
     *
     * <p>Source: Reda &amp; Andreas, NREL/TP-560-34302 (2008), eq. 42. No refraction is added once the whole disc is below
     * the horizon.
     */
    public double apparentElevationDeg(double pressurePa, double airC) {
        if (elevationDeg < LOWEST_REFRACTED_DEG) {
            return elevationDeg;
        }
        double bentDeg = elevationDeg + 10.3 / (elevationDeg + 5.11);
        double tangent = StrictMath.tan(StrictMath.toRadians(bentDeg));
        return elevationDeg + pressurePa / 101_000 * (283 / (273 + airC)) * 1.02 / (60 * tangent);
    }
}
