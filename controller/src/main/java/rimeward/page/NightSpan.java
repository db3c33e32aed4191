package rimeward.page;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;

/**
 * A night as the record counts them: from local noon to local noon.
 *
 * @param fromEpochS its beginning, s since 1970 UTC
 * @param toEpochS its end
 */
public record NightSpan(LocalDate evening, long fromEpochS, long toEpochS) {
    public static NightSpan of(LocalDate evening, ZoneId zone) {
        return new NightSpan(evening, noonS(evening, zone), noonS(evening.plusDays(1), zone));
    }

    private static long noonS(LocalDate day, ZoneId zone) {
        return day.atTime(LocalTime.NOON).atZone(zone).toEpochSecond();
    }
}
