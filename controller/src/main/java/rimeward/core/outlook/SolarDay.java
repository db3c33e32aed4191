package rimeward.core.outlook;

import static java.lang.StrictMath.asin;
import static java.lang.StrictMath.cos;
import static java.lang.StrictMath.sin;
import static java.lang.StrictMath.tan;
import static java.lang.StrictMath.toDegrees;
import static java.lang.StrictMath.toRadians;

/**
 * The sun seen from the earth's centre. Source: the equations of NOAA's solar calculator, after Meeus, "Astronomical Algorithms"
 * (1991); numbers from memory, checked in the bench against the full algorithm of Reda &amp; Andreas.
 *
 * @param declinationRad how far north of the equator it stands
 * @param clockAheadS how much earlier than at mean noon it stands highest, s: the equation of time
 */
record SolarDay(double declinationRad, double clockAheadS) {
    private static final double CENTURY_S = 36_525 * 86_400.0;
    private static final double J2000_EPOCH_S = 946_728_000;
    private static final double DEG_S = 240;

    static SolarDay at(long epochS) {
        double t = (epochS - J2000_EPOCH_S) / CENTURY_S;
        double longitudeRad = toRadians(280.46646 + t * (36_000.76983 + t * 0.0003032));
        double anomalyRad = toRadians(357.52911 + t * (35_999.05029 - t * 0.0001537));
        double eccentricity = 0.016708634 - t * (0.000042037 + t * 0.0000001267);
        double nodeRad = toRadians(125.04 - 1934.136 * t);
        double centreDeg = sin(anomalyRad) * (1.914602 - t * (0.004817 + t * 0.000014))
                + sin(2 * anomalyRad) * (0.019993 - t * 0.000101)
                + sin(3 * anomalyRad) * 0.000289;
        double seenRad = longitudeRad + toRadians(centreDeg - 0.00569 - 0.00478 * sin(nodeRad));
        double obliquityRad = toRadians(23.43929 - 0.0130042 * t + 0.00256 * cos(nodeRad));
        double y = tan(obliquityRad / 2) * tan(obliquityRad / 2);
        double aheadRad = y * sin(2 * longitudeRad)
                - 2 * eccentricity * sin(anomalyRad)
                + 4 * eccentricity * y * sin(anomalyRad) * cos(2 * longitudeRad)
                - y * y / 2 * sin(4 * longitudeRad)
                - 1.25 * eccentricity * eccentricity * sin(2 * anomalyRad);
        return new SolarDay(asin(sin(obliquityRad) * sin(seenRad)), toDegrees(aheadRad) * DEG_S);
    }
}
