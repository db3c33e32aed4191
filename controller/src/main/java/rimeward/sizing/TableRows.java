package rimeward.sizing;

import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** A table with a {@code time} column and either {@code air} or {@code lowest-air} and {@code highest-air}, in °C, °F or K. */
final class TableRows implements WeatherText.Rows {
    private static final double FAHRENHEIT_ZERO_C = -160.0 / 9;
    private static final double FAHRENHEIT_DEGREE_K = 5.0 / 9;
    private static final double KELVIN_ZERO_C = -273.15;

    private final List<String> header;
    private final int time;
    private final int[] temperatures;
    private final AirCourse course = new AirCourse();
    private final DayWaves days = new DayWaves();
    private long lastS = Long.MIN_VALUE;
    private int unmeasured;
    private int impossible;

    private TableRows(List<String> header, int time, int... temperatures) {
        this.header = header;
        this.time = time;
        this.temperatures = temperatures;
    }

    static TableRows of(List<String> header, int line) throws Refused {
        int time = header.indexOf("time");
        int air = column(header, "air");
        int lowest = column(header, "lowest-air");
        int highest = column(header, "highest-air");
        if (time >= 0 && air >= 0) {
            return new TableRows(header, time, air);
        }
        if (time >= 0 && lowest >= 0 && highest >= 0) {
            return new TableRows(header, time, lowest, highest);
        }
        throw new Refused(
                List.of("line " + line + " must be a header that names a column \"time\" and a column \"air °C\""
                        + " (or \"lowest-air °C\" and \"highest-air °C\", one row a day; °F and K will do too), parted by commas; it reads \""
                        + shortened(String.join(",", header)) + "\""));
    }

    @Override
    public void take(List<String> cells, int line, WeatherFaults faults) {
        if (cells.size() != header.size()) {
            faults.add("line " + line + " has " + cells.size() + " cells, the header " + header.size()
                    + "; write a point, not a comma, in numbers, and leave unmeasured cells empty");
            return;
        }
        OffsetDateTime at;
        try {
            at = WeatherText.time(cells.get(time));
        } catch (DateTimeException e) {
            faults.add("line " + line + ", column \"time\": \"" + shortened(cells.get(time))
                    + "\" is no time; write it as 2026-01-31T06:00Z or 2026-01-31T06:00+01:00");
            return;
        }
        if (at.toEpochSecond() <= lastS) {
            faults.add("line " + line + ", column \"time\": " + cells.get(time)
                    + " is not later than the row above; sort the rows by time, each once");
            return;
        }
        lastS = at.toEpochSecond();
        temperatures(at, cells, line, faults);
    }

    private void temperatures(OffsetDateTime at, List<String> cells, int line, WeatherFaults faults) {
        double[] airC = new double[temperatures.length];
        for (int i = 0; i < airC.length; i++) {
            String cell = cells.get(temperatures[i]);
            if (WeatherText.isMissing(cell)) {
                unmeasured++;
                return;
            }
            OptionalDouble value = WeatherText.number(cell);
            if (value.isEmpty()) {
                faults.add("line " + line + ", column \"" + header.get(temperatures[i]) + "\": \"" + shortened(cell)
                        + "\" is no number; write digits with a point, or leave it empty where nothing was measured");
                return;
            }
            airC[i] = celsius(value.getAsDouble(), header.get(temperatures[i]));
            if (!WeatherText.isPossible(airC[i])) {
                impossible++;
                return;
            }
        }
        if (airC.length == 1) {
            course.add(at.toEpochSecond(), airC[0]);
        } else if (airC[0] > airC[1]) {
            faults.add("line " + line + ": the lowest, " + cells.get(temperatures[0]) + ", is above the highest, "
                    + cells.get(temperatures[1]) + "; exchange them");
        } else if (!days.add(at, airC[0], airC[1])) {
            faults.add("line " + line + ": a second row for " + at.toLocalDate()
                    + "; a file of daily extremes has one row a day");
        }
    }

    @Override
    public Weather weather() {
        boolean daily = temperatures.length == 2;
        return new Weather(
                daily ? days.course() : course,
                daily ? Weather.Form.DAILY : Weather.Form.READINGS,
                unmeasured,
                impossible);
    }

    private static int column(List<String> header, String quantity) {
        List<Integer> found = new ArrayList<>();
        for (String unit : List.of("°C", "C", "°F", "F", "K")) {
            found.add(header.indexOf(quantity + " " + unit));
        }
        return found.stream().filter(at -> at >= 0).findFirst().orElse(-1);
    }

    private static double celsius(double value, String column) {
        if (column.endsWith("F")) {
            return value * FAHRENHEIT_DEGREE_K + FAHRENHEIT_ZERO_C;
        }
        return column.endsWith("K") ? value + KELVIN_ZERO_C : value;
    }

    private static String shortened(String text) {
        return text.length() <= 60 ? text : text.substring(0, 60) + "…";
    }
}
