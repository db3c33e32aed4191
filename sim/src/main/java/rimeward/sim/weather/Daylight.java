package rimeward.sim.weather;

import static java.lang.StrictMath.acos;
import static java.lang.StrictMath.cos;
import static java.lang.StrictMath.sin;
import static java.lang.StrictMath.toRadians;

/**
 * Sunrise, noon and sunset of one day at a place, epoch seconds; good to about a minute. Where the sun does not set, the day
 * lasts 24 h; where it does not rise, it has no length.
 */
public record Daylight(long sunriseEpochS, long noonEpochS, long sunsetEpochS) {
    private static final double RISING_RAD = toRadians(-0.8333); // upper limb on the horizon, usual refraction
    private static final double HALF_DAY_S = 43_200;

    /** The daylight whose noon is nearest to the given time. */
    public static Daylight around(Place place, long epochS) {
        var sun = Sun.at(epochS);
        long noon = epochS - StrictMath.round(sun.hourAngleRad(place) / StrictMath.PI * HALF_DAY_S);
        double phi = toRadians(place.latitudeDeg());
        double delta = sun.declinationRad();
        double cosine = (sin(RISING_RAD) - sin(phi) * sin(delta)) / (cos(phi) * cos(delta));
        double halfRad = acos(Math.max(-1, Math.min(1, cosine)));
        long half = StrictMath.round(halfRad / StrictMath.PI * HALF_DAY_S);
        return new Daylight(noon - half, noon, noon + half);
    }

    public double lengthS() {
        return sunsetEpochS - sunriseEpochS;
    }
}
