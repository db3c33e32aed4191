package rimeward.sim.scenario;

import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rimeward.adapter.config.Kind;
import rimeward.adapter.config.Misread;

/** Kinds of value that tell a time. */
final class Times {
    private static final Pattern DAY_AND_CLOCK =
            Pattern.compile("(?:day ([1-9]\\d{0,2}) )?([01]?\\d|2[0-3]):([0-5]\\d)(?::([0-5]\\d))?");

    private static final LocalDateTime NO_TIME = LocalDateTime.of(2000, 1, 1, 12, 0);

    /**
     * A moment of a replay by its clock.
     *
     * @param day counted from 1, the day on which the replay starts; 0 if none was said: then the first time the clock shows it
     * @param secondOfDay since midnight, s
     */
    record Moment(int day, int secondOfDay) {
        private static final long DAY_S = 86_400;

        /** How long after the start that is, s; negative if before. */
        long afterStartS(LocalDateTime start) {
            long startS = start.toLocalTime().toSecondOfDay();
            if (day > 0) {
                return (day - 1) * DAY_S + secondOfDay - startS;
            }
            return Math.floorMod(secondOfDay - startS, DAY_S);
        }
    }

    private Times() {}

    /** A local date and time. */
    static Kind<LocalDateTime> dateTime() {
        String expected = "a local date and time such as 2014-01-26T12:00:00";
        return new Kind<>(expected, NO_TIME, value -> {
            if (value instanceof LocalDateTime time) {
                return time;
            }
            try {
                return LocalDateTime.parse(String.valueOf(value).replace(' ', 'T'));
            } catch (DateTimeException e) {
                throw new Misread("must be " + expected, "write year-month-dayThour:minute:second");
            }
        });
    }

    /** A fixed offset from UTC. */
    static Kind<ZoneOffset> offset() {
        String expected = "an offset from UTC such as \"+00:00\" or \"-05:00\"";
        return new Kind<>(expected, ZoneOffset.UTC, value -> {
            try {
                return ZoneOffset.of(String.valueOf(value));
            } catch (DateTimeException e) {
                throw new Misread("must be " + expected, "write sign, hours and minutes");
            }
        });
    }

    /** A moment of the replay. */
    static Kind<Moment> moment() {
        String expected = "a time such as \"02:14\" or \"day 2 02:14\"";
        return new Kind<>(expected, new Moment(0, 0), value -> {
            Matcher told = DAY_AND_CLOCK.matcher(String.valueOf(value));
            if (!told.matches()) {
                throw new Misread("must be " + expected, "write the day, counted from the start's, and the clock");
            }
            int day = told.group(1) == null ? 0 : Integer.parseInt(told.group(1));
            int second = told.group(4) == null ? 0 : Integer.parseInt(told.group(4));
            return new Moment(
                    day, Integer.parseInt(told.group(2)) * 3600 + Integer.parseInt(told.group(3)) * 60 + second);
        });
    }
}
