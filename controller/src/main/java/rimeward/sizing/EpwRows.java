package rimeward.sizing;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.OptionalDouble;

/**
 * An EPW file (EnergyPlus "Auxiliary Programs"; from memory): eight header lines, then hourly rows whose second and third fields are
 * month and day, the fourth the hour 1…24 of local standard time, at whose end the dry-bulb temperature in the seventh, °C, was read.
 * Months of a typical year come from different years; all are told as of one.
 */
final class EpwRows implements WeatherText.Rows {
    private static final int HEADER_LINES = 8;
    private static final int ZONE = 8;
    private static final int MONTH = 1;
    private static final int DAY = 2;
    private static final int HOUR = 3;
    private static final int DRY_BULB = 6;
    private static final int LEAP_YEAR = 2000;
    private static final double MISSING_C = 99.9;
    private static final long S_PER_H = 3600;

    private final ZoneOffset offset;
    private final AirCourse course = new AirCourse();
    private long lastS = Long.MIN_VALUE;
    private boolean leaps; // whether the file has a 29 February; without one, March follows at once
    private int unmeasured;
    private int impossible;

    /** Stands at the first line. */
    EpwRows(WeatherText.Lines lines) throws Refused {
        offset = offset(WeatherText.cells(lines.text()));
        for (int i = 1; i < HEADER_LINES; i++) {
            if (!lines.next()) {
                throw new Refused(List.of(
                        "line " + lines.number() + " is the last, and an EPW file begins with eight lines of header;"
                                + " fetch the file again"));
            }
        }
    }

    private static ZoneOffset offset(List<String> location) throws Refused {
        OptionalDouble hours = location.size() > ZONE ? WeatherText.number(location.get(ZONE)) : OptionalDouble.empty();
        if (hours.isEmpty() || Math.abs(hours.getAsDouble()) > 14) {
            throw new Refused(List.of(
                    "line 1 begins with LOCATION as an EPW file does, but its ninth field is no time zone (hours,"
                            + " −14…14); fetch the file again"));
        }
        return ZoneOffset.ofTotalSeconds((int) Math.round(hours.getAsDouble() * S_PER_H));
    }

    @Override
    public void take(List<String> cells, int line, WeatherFaults faults) {
        if (cells.size() <= DRY_BULB) {
            faults.add("line " + line + " has " + cells.size() + " fields, an EPW row 35; fetch the file again");
            return;
        }
        OptionalDouble dryBulb = WeatherText.number(cells.get(DRY_BULB));
        if (dryBulb.isEmpty()) {
            faults.add("line " + line + ", field 7 (dry bulb): \"" + cells.get(DRY_BULB)
                    + "\" is no number; fetch the file again");
            return;
        }
        try {
            place(atS(cells), dryBulb.getAsDouble(), line, faults);
        } catch (DateTimeException | NumberFormatException e) {
            faults.add("line " + line + ", fields 2 to 4: " + String.join(",", cells.subList(MONTH, DRY_BULB - 2))
                    + " is no month, day and hour; fetch the file again");
        }
    }

    private void place(long atS, double dryBulbC, int line, WeatherFaults faults) {
        if (atS <= lastS) {
            faults.add("line " + line
                    + " is not later than the row above; an EPW file here is hourly, from January to December");
            return;
        }
        lastS = atS;
        if (dryBulbC == MISSING_C) {
            unmeasured++;
        } else if (!WeatherText.isPossible(dryBulbC)) {
            impossible++;
        } else {
            course.add(atS, dryBulbC);
        }
    }

    private long atS(List<String> cells) {
        int month = Integer.parseInt(cells.get(MONTH));
        int day = Integer.parseInt(cells.get(DAY));
        int hour = Integer.parseInt(cells.get(HOUR));
        if (hour < 1 || hour > 24) {
            throw new DateTimeException("hour " + hour);
        }
        leaps |= month == 2 && day == 29;
        LocalDate date = LocalDate.of(LEAP_YEAR, month, day).minusDays(month > 2 && !leaps ? 1 : 0);
        return date.atStartOfDay().toEpochSecond(offset) + hour * S_PER_H;
    }

    @Override
    public Weather weather() {
        return new Weather(course, Weather.Form.EPW, unmeasured, impossible);
    }
}
