package rimeward.sim.weather;

/** Global radiation on a level surface, W/m², from the sun's height and the cloud, for records that do not tell it. */
public final class Sunshine {
    private Sunshine() {}

    /**
     * Radiation under a cloudless sky at an apparent solar elevation in degrees; 0 when the sun is down.
     *
     * <p>Source: Haurwitz, J. Meteorology 2 (1945) 154–166, with the coefficients of pvlib.
     */
    public static double clearWPerM2(double apparentElevationDeg) {
        double height = StrictMath.sin(StrictMath.toRadians(apparentElevationDeg));
        return height <= 0 ? 0 : 1098 * height * StrictMath.exp(-0.059 / height);
    }

    /**
     * The part of clear-sky radiation that comes through cloud covering this fraction of the sky.
     *
     * <p>Source: Kasten &amp; Czeplak, Solar Energy 24 (1980) 177–189.
     */
    public static double throughCloud(double cloudFraction) {
        return 1 - 0.75 * StrictMath.pow(cloudFraction, 3.4);
    }
}
