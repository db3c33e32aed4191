package rimeward.core.outlook;

import java.time.Instant;
import java.util.Optional;
import rimeward.core.outlook.Daylight.NeverRises;
import rimeward.core.outlook.Daylight.NeverSets;
import rimeward.core.outlook.Daylight.RisesAndSets;
import rimeward.site.Forecasting;
import rimeward.site.Site;

/**
 * When the sun rises and sets over a place; a degree more or less, which is four minutes, does not matter here. Days are counted by
 * mean solar time, so that each has one noon.
 *
 * @param latitudeDeg north positive
 * @param longitudeDeg east positive
 */
public record SunTimes(double latitudeDeg, double longitudeDeg) {
    private static final long DAY_S = 86_400;
    private static final long HALF_DAY_S = DAY_S / 2;
    private static final double DEG_S = 240; // in which the earth turns one degree

    /** Upper limb on the horizon, with the usual refraction, degrees. */
    private static final double RISING_DEG = -0.833;

    /** The change from day to night takes so long before and after sunset, s. Own choice. */
    private static final double DUSK_S = 3600;

    /** @throws IllegalArgumentException if there is no such place */
    public SunTimes {
        // Written so that NaN is refused too.
        if (!(latitudeDeg >= -90 && latitudeDeg <= 90 && longitudeDeg >= -180 && longitudeDeg <= 180)) {
            throw new IllegalArgumentException("latitude " + latitudeDeg + ", longitude " + longitudeDeg
                    + " is no place; they must lie between -90 and 90 and between -180 and 180 degrees");
        }
    }

    /** Over a site: the place is known, coarsely, where a weather service is asked; elsewhere the clock must do. */
    public static SunTimes of(Site site, long epochS) {
        return site.forecasting() instanceof Forecasting.FromService from
                ? new SunTimes(from.latitudeDeg(), from.longitudeDeg())
                : byClock(Instant.ofEpochSecond(epochS)
                        .atZone(site.zone())
                        .getOffset()
                        .getTotalSeconds());
    }

    /**
     * Where nobody said the place: nights of twelve hours, from six to six by the clock.
     *
     * @param offsetS local time less UTC, s
     */
    public static SunTimes byClock(int offsetS) {
        double deg = offsetS / DEG_S;
        return new SunTimes(0, deg - 360 * StrictMath.rint(deg / 360));
    }

    /** The day at this place that the second falls in, from midnight to midnight. */
    public Daylight around(long epochS) {
        return daylight(dayOf(epochS));
    }

    /** The last time that the sun stood highest. */
    public long noonBefore(long epochS) {
        return daylight(nightOf(epochS)).noonEpochS();
    }

    /** The next time that it does. */
    public long noonAfter(long epochS) {
        return daylight(nightOf(epochS) + 1).noonEpochS();
    }

    /** The night between those two noons; empty where the sun does not set or rise then. */
    public Optional<NightSpan> night(long epochS) {
        long day = nightOf(epochS);
        return daylight(day) instanceof RisesAndSets evening && daylight(day + 1) instanceof RisesAndSets morning
                ? Optional.of(new NightSpan(evening.sunsetEpochS(), morning.sunriseEpochS()))
                : Optional.empty();
    }

    /** Share of night: 0 by day, 1 at night, in between about sunset and sunrise. */
    public double darkness(long epochS) {
        Daylight day = around(epochS);
        if (day instanceof RisesAndSets rises) {
            double lightS = StrictMath.min(epochS - rises.sunriseEpochS(), rises.sunsetEpochS() - epochS);
            return StrictMath.max(0, StrictMath.min(1, 0.5 - lightS / (2 * DUSK_S)));
        }
        return day instanceof NeverRises ? 1 : 0;
    }

    private long dayOf(long epochS) {
        return Math.floorDiv(epochS + StrictMath.round(longitudeDeg * DEG_S), DAY_S);
    }

    /** The day at whose noon the night began that the second falls in. */
    private long nightOf(long epochS) {
        long day = dayOf(epochS);
        return epochS < daylight(day).noonEpochS() ? day - 1 : day;
    }

    private Daylight daylight(long day) {
        long meanNoonS = day * DAY_S + HALF_DAY_S - StrictMath.round(longitudeDeg * DEG_S);
        SolarDay sun = SolarDay.at(meanNoonS);
        long noonS = meanNoonS - StrictMath.round(sun.clockAheadS());
        double phi = StrictMath.toRadians(latitudeDeg);
        double cosine = (StrictMath.sin(StrictMath.toRadians(RISING_DEG))
                        - StrictMath.sin(phi) * StrictMath.sin(sun.declinationRad()))
                / (StrictMath.cos(phi) * StrictMath.cos(sun.declinationRad()));
        if (cosine <= -1) {
            return new NeverSets(noonS);
        }
        if (cosine >= 1) {
            return new NeverRises(noonS);
        }
        long halfS = StrictMath.round(StrictMath.toDegrees(StrictMath.acos(cosine)) * DEG_S);
        return new RisesAndSets(noonS - halfS, noonS, noonS + halfS);
    }
}
