package rimeward.strip;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;

/** Local times for people. Names of days and months are our own, because those of the JDK change from one release to the next. */
public final class Stamp {
    private static final List<String> DAYS = List.of("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun");
    private static final List<String> MONTHS =
            List.of("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec");

    private Stamp() {}

    /** "Tue 6 Jan". */
    public static String day(long epochS, ZoneOffset offset) {
        LocalDateTime at = at(epochS, offset);
        return DAYS.get(at.getDayOfWeek().getValue() - 1) + " " + at.getDayOfMonth() + " "
                + MONTHS.get(at.getMonthValue() - 1);
    }

    /** "Tue 6 Jan 2026". */
    public static String date(long epochS, ZoneOffset offset) {
        return day(epochS, offset) + " " + at(epochS, offset).getYear();
    }

    /** "06:10". */
    public static String clock(long epochS, ZoneOffset offset) {
        LocalDateTime at = at(epochS, offset);
        return two(at.getHour()) + ":" + two(at.getMinute());
    }

    /** "06:10:05". */
    public static String second(long epochS, ZoneOffset offset) {
        return clock(epochS, offset) + ":" + two(at(epochS, offset).getSecond());
    }

    /** For machines: "2026-01-06T06:10:05+01:00". */
    public static String iso(long epochS, ZoneOffset offset) {
        LocalDateTime at = at(epochS, offset);
        String zone = offset.getTotalSeconds() == 0 ? "Z" : offset.getId();
        return at.getYear() + "-" + two(at.getMonthValue()) + "-" + two(at.getDayOfMonth()) + "T"
                + second(epochS, offset) + zone;
    }

    private static LocalDateTime at(long epochS, ZoneOffset offset) {
        return LocalDateTime.ofEpochSecond(epochS, 0, offset);
    }

    private static String two(int number) {
        return number < 10 ? "0" + number : Integer.toString(number);
    }
}
