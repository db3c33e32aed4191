package rimeward.core.outlook;

import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.Locale;

/** Moments as the clock of the place shows them; written here because formats of the JDK are not the same in every version. */
record LocalTimes(ZoneId zone) {
    /** "16:10". */
    String clock(long epochS) {
        ZonedDateTime at = at(epochS);
        return String.format(Locale.ROOT, "%02d:%02d", at.getHour(), at.getMinute());
    }

    /** "01:00 +01:00": the offset tells the hour that comes twice when summer time ends. */
    String clockAndOffset(long epochS) {
        ZoneOffset offset = at(epochS).getOffset();
        return clock(epochS) + " " + (offset.equals(ZoneOffset.UTC) ? "+00:00" : offset.getId());
    }

    /** "Sat 10 Jan 16:10". */
    String day(long epochS) {
        ZonedDateTime at = at(epochS);
        return brief(at.getDayOfWeek().name()) + " " + at.getDayOfMonth() + " "
                + brief(at.getMonth().name()) + " " + clock(epochS);
    }

    private static String brief(String name) {
        return name.charAt(0) + name.substring(1, 3).toLowerCase(Locale.ROOT);
    }

    private ZonedDateTime at(long epochS) {
        return Instant.ofEpochSecond(epochS).atZone(zone);
    }
}
