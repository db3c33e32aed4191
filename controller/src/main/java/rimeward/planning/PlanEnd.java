package rimeward.planning;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import rimeward.core.outlook.SunTimes;
import rimeward.site.Site;

/** How far a plan looks: to the noon at which the record's night ends, so that the two can be compared. */
public final class PlanEnd {
    private static final int NOON_H = 12;

    /** From an hour after sunrise on it only gets warmer. */
    private static final long NIGHT_ENDS_S = 3600;

    private PlanEnd() {}

    /** Whether a night goes on, or comes this evening: from noon until an hour after sunrise. */
    static boolean isEveningOrNight(Site site, SunTimes sun, long nowS) {
        return local(site, nowS).getHour() >= NOON_H || isNight(sun, nowS);
    }

    private static boolean isNight(SunTimes sun, long nowS) {
        return sun.night(nowS)
                .map(span -> nowS >= span.sunsetEpochS() && nowS < span.sunriseEpochS() + NIGHT_ENDS_S)
                .orElse(true);
    }

    /** The noon after the night that goes on, or else after the one that comes; s since 1970 UTC. */
    public static long epochS(Site site, SunTimes sun, long nowS) {
        ZonedDateTime local = local(site, nowS);
        boolean endsToday = local.getHour() < NOON_H && isNight(sun, nowS);
        LocalDate day = local.toLocalDate().plusDays(endsToday ? 0 : 1);
        return day.atTime(LocalTime.NOON).atZone(site.zone()).toEpochSecond();
    }

    private static ZonedDateTime local(Site site, long epochS) {
        return Instant.ofEpochSecond(epochS).atZone(site.zone());
    }
}
