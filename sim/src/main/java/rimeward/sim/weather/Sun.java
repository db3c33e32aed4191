package rimeward.sim.weather;

import static java.lang.StrictMath.asin;
import static java.lang.StrictMath.atan;
import static java.lang.StrictMath.atan2;
import static java.lang.StrictMath.cos;
import static java.lang.StrictMath.sin;
import static java.lang.StrictMath.tan;
import static java.lang.StrictMath.toDegrees;
import static java.lang.StrictMath.toRadians;

/**
 * Where the sun is. A shortened solar position algorithm of Reda &amp; Andreas (NREL/TP-560-34302, 2008): within 2e-4° of
 * the full one from 1990 to 2040, the same bytes on every machine. (Libraries of the full algorithm use
 * {@code java.lang.Math}, whose last digits differ between processors.)
 */
public final class Sun {
    private static final double EPOCH_JULIAN_DAY = 2_440_587.5;
    private static final double J2000_JULIAN_DAY = 2_451_545.0;
    private static final double DAY_S = 86_400;
    private static final double TURN_DEG_PER_DAY = 360.98564736629; // sidereal
    private static final double CLOCK_LAG_S = 69; // terrestrial minus universal time about 2020; 10 s amount to 1e-4°
    private static final double EARTH_RADIUS_M = 6_378_140;
    private static final double POLE_TO_EQUATOR = 0.99664719;

    private final double rightAscensionRad;
    private final double declinationRad;
    private final double siderealDeg;
    private final double parallaxRad;

    private Sun(double days) {
        double centuries = (days + CLOCK_LAG_S / DAY_S) / 36_525;
        double millennia = centuries / 10;
        double longitude = sum(SunTerms.LONGITUDE, millennia)
                + millennia
                        * (sum(SunTerms.LONGITUDE_PER_MILLENNIUM, millennia)
                                + millennia * sum(SunTerms.LONGITUDE_PER_MILLENNIUM2, millennia));
        double latitudeRad = -sum(SunTerms.LATITUDE, millennia);
        double distanceAu = sum(SunTerms.DISTANCE, millennia);
        double[] nutationDeg = nutationDeg(centuries);
        double obliquityRad = toRadians(meanObliquityDeg(centuries) + nutationDeg[1]);
        double aberrationDeg = -20.4898 / (3600 * distanceAu);
        double lambdaRad = longitude + StrictMath.PI + toRadians(nutationDeg[0] + aberrationDeg);

        rightAscensionRad =
                atan2(sin(lambdaRad) * cos(obliquityRad) - tan(latitudeRad) * sin(obliquityRad), cos(lambdaRad));
        declinationRad =
                asin(sin(latitudeRad) * cos(obliquityRad) + cos(latitudeRad) * sin(obliquityRad) * sin(lambdaRad));
        siderealDeg = 280.46061837
                + TURN_DEG_PER_DAY * days
                + 0.000387933 * centuries * centuries
                + nutationDeg[0] * cos(obliquityRad);
        parallaxRad = toRadians(8.794 / (3600 * distanceAu));
    }

    /** The sun at a time, for whoever looks at it. */
    public static Sun at(long epochS) {
        return new Sun(EPOCH_JULIAN_DAY - J2000_JULIAN_DAY + epochS / DAY_S);
    }

    /** Where it stands over a place, parallax included, refraction not. */
    public SunPosition from(Place place) {
        double phi = toRadians(place.latitudeDeg());
        double hour = hourAngleRad(place);
        double reduced = atan(POLE_TO_EQUATOR * tan(phi));
        double x = cos(reduced) + place.altitudeM() / EARTH_RADIUS_M * cos(phi);
        double y = POLE_TO_EQUATOR * sin(reduced) + place.altitudeM() / EARTH_RADIUS_M * sin(phi);
        double across = cos(declinationRad) - x * sin(parallaxRad) * cos(hour);
        double shift = atan2(-x * sin(parallaxRad) * sin(hour), across);
        double delta = atan2((sin(declinationRad) - y * sin(parallaxRad)) * cos(shift), across);
        double seenHour = hour - shift;

        double elevation = asin(sin(phi) * sin(delta) + cos(phi) * cos(delta) * cos(seenHour));
        double fromSouth = atan2(sin(seenHour), cos(seenHour) * sin(phi) - tan(delta) * cos(phi));
        return new SunPosition(toDegrees(elevation), (toDegrees(fromSouth) + 180) % 360);
    }

    /** Angle since the sun stood due south (north of it: due north), −π…π. */
    double hourAngleRad(Place place) {
        double deg = siderealDeg + place.longitudeDeg() - toDegrees(rightAscensionRad);
        return toRadians(deg - 360 * StrictMath.rint(deg / 360));
    }

    double declinationRad() {
        return declinationRad;
    }

    private static double sum(double[][] terms, double millennia) {
        double sum = 0;
        for (double[] term : terms) {
            sum += term[0] * cos(term[1] + term[2] * millennia);
        }
        return sum * 1e-8;
    }

    /** Nutation in longitude and in obliquity. */
    private static double[] nutationDeg(double centuries) {
        double[] anglesDeg = {
            297.85036 + 445_267.11148 * centuries, // moon from sun
            357.52772 + 35_999.05034 * centuries, // anomaly of the sun
            134.96298 + 477_198.867398 * centuries, // anomaly of the moon
            93.27191 + 483_202.017538 * centuries, // moon's latitude argument
            125.04452 - 1_934.136261 * centuries // moon's node
        };
        double longitude = 0;
        double obliquity = 0;
        for (double[] term : SunTerms.NUTATION) {
            double angleDeg = 0;
            for (int i = 0; i < anglesDeg.length; i++) {
                angleDeg += term[i] * anglesDeg[i];
            }
            longitude += (term[5] + term[6] * centuries) * sin(toRadians(angleDeg));
            obliquity += (term[7] + term[8] * centuries) * cos(toRadians(angleDeg));
        }
        return new double[] {longitude / 36e6, obliquity / 36e6};
    }

    private static double meanObliquityDeg(double centuries) {
        return (84_381.448 - 46.8093 * centuries - 0.000155 * centuries * centuries) / 3600;
    }
}
