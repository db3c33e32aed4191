package rimeward.record;

import java.time.Instant;
import java.time.ZoneId;

/**
 * How high the sun stands, as far as a clock and a calendar tell: nobody says where the tunnel is, so it is taken to be at 52° north, and the
 * sun to be highest at noon of the zone's standard time. A quarter of an hour and a few degrees of latitude do not matter to who only asks how a day's sun
 * comes and goes.
 */
final class SunClock {
    /** Own choice: the middle of where tunnels are heated in winter. */
    private static final double LATITUDE_SINE = StrictMath.sin(StrictMath.toRadians(52));

    private static final double LATITUDE_COSINE = StrictMath.sqrt(1 - LATITUDE_SINE * LATITUDE_SINE);
    private static final double DAY_S = 86_400;
    private static final double YEAR_DAYS = 365.2425;

    /** From midwinter to the first of January, days. */
    private static final double SINCE_MIDWINTER_DAYS = 10;

    private SunClock() {}

    /** Sine of the sun's height, 0 where it is below the horizon. */
    static double height(long epochS, ZoneId zone) {
        long standardS = epochS
                + zone.getRules()
                        .getStandardOffset(Instant.ofEpochSecond(epochS))
                        .getTotalSeconds();
        double turn = 2 * StrictMath.PI / YEAR_DAYS * (standardS / DAY_S + SINCE_MIDWINTER_DAYS); // 1970 begins a year
        double declination = -StrictMath.toRadians(23.44) * StrictMath.cos(turn);
        double sinceNoon = 2 * StrictMath.PI * (StrictMath.floorMod(standardS, 86_400L) / DAY_S - 0.5);
        double sine = LATITUDE_SINE * StrictMath.sin(declination)
                + LATITUDE_COSINE * StrictMath.cos(declination) * StrictMath.cos(sinceNoon);
        return StrictMath.max(0, sine);
    }
}
