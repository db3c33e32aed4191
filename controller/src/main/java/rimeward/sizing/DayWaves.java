package rimeward.sizing;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;

/**
 * Hours between daily extremes: half waves of a cosine from each day's lowest at 07:00 to its highest at 15:00 and on to the next day's
 * lowest, by the clock of the file. Own choice of hours, about sunrise and mid-afternoon in winter. Before the first day and after the
 * last, and beside a missing day, the day's own extremes go on.
 */
final class DayWaves {
    private static final int COLDEST_HOUR = 7;
    private static final int WARMEST_HOUR = 15;
    private static final int HOURS = 24;
    private static final long S_PER_H = 3600;

    private final List<Day> days = new ArrayList<>();

    private record Day(OffsetDateTime midnight, double lowestC, double highestC) {
        boolean isNextTo(Day later) {
            return midnight.toLocalDate().plusDays(1).equals(later.midnight.toLocalDate());
        }
    }

    /** Adds a day; false if it has a row already. */
    boolean add(OffsetDateTime at, double lowestC, double highestC) {
        OffsetDateTime midnight = at.toLocalDate().atStartOfDay().atOffset(at.getOffset());
        Day day = new Day(midnight, lowestC, highestC);
        if (!days.isEmpty()) {
            Day last = days.get(days.size() - 1);
            if (!last.midnight().toLocalDate().isBefore(midnight.toLocalDate())) {
                return false;
            }
        }
        days.add(day);
        return true;
    }

    AirCourse course() {
        AirCourse course = new AirCourse();
        for (int i = 0; i < days.size(); i++) {
            Day day = days.get(i);
            boolean follows = i > 0 && days.get(i - 1).isNextTo(day);
            boolean goesOn = i + 1 < days.size() && day.isNextTo(days.get(i + 1));
            double highBeforeC = follows ? days.get(i - 1).highestC() : day.highestC();
            double lowAfterC = goesOn ? days.get(i + 1).lowestC() : day.lowestC();
            long startS = day.midnight().toEpochSecond();
            for (int hour = 0; hour < HOURS + (goesOn ? 0 : 1); hour++) {
                add(course, startS + hour * S_PER_H, airC(day, highBeforeC, lowAfterC, hour));
            }
        }
        return course;
    }

    /** Where a row's offset from UTC changes, an hour may come twice: the first is kept. */
    private static void add(AirCourse course, long epochS, double airC) {
        if (course.size() == 0 || course.epochS(course.size() - 1) < epochS) {
            course.add(epochS, airC);
        }
    }

    private static double airC(Day day, double highBeforeC, double lowAfterC, int hour) {
        if (hour < COLDEST_HOUR) {
            return wave(highBeforeC, day.lowestC(), hour + HOURS - WARMEST_HOUR, HOURS - WARMEST_HOUR + COLDEST_HOUR);
        }
        if (hour < WARMEST_HOUR) {
            return wave(day.lowestC(), day.highestC(), hour - COLDEST_HOUR, WARMEST_HOUR - COLDEST_HOUR);
        }
        return wave(day.highestC(), lowAfterC, hour - WARMEST_HOUR, HOURS - WARMEST_HOUR + COLDEST_HOUR);
    }

    private static double wave(double fromC, double toC, double passedH, double lengthH) {
        double share = (1 - StrictMath.cos(StrictMath.PI * passedH / lengthH)) / 2;
        return fromC + (toC - fromC) * share;
    }
}
