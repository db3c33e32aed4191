package rimeward.sim.weather;

import java.nio.file.Path;
import java.time.Year;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;

/**
 * An EPW file (EnergyPlus "Auxiliary Programs", chapter weather file): eight header lines, then rows of 35 fields, hourly,
 * in local standard time. Values are of the end of the hour; radiation is the mean over it, so it counts for its middle.
 *
 * <p>Typical years are stitched from months of different years. Such a file is told as one winter: July to December of one
 * year, January to June of the next, so that no winter is cut at New Year.
 */
record Epw(List<CsvLine> lines, Place place, ZoneOffset zone) {
    private static final int HEADER_LINES = 8;
    private static final int JULY = 7;
    private static final List<String> FIELDS = fields();

    private static List<String> fields() {
        var names = new ArrayList<>(List.of("year", "month", "day", "hour"));
        for (int i = 5; i <= 35; i++) {
            names.add("field " + i);
        }
        return List.copyOf(names);
    }

    /** Field numbers as in the description of the format, counted from 1. */
    static ColumnMap map(ZoneOffset zone) {
        return ColumnMap.builder()
                .zone(zone.getId())
                .time("year, month, day, hour as y M d H")
                .put(Quantity.AIR, "field 7", "°C", 0, List.of("99.9"))
                .put(Quantity.DEW_POINT, "field 8", "°C", 0, List.of("99.9"))
                .put(Quantity.PRESSURE, "field 10", "Pa", 0, List.of("999999"))
                .put(Quantity.RADIATION, "field 14", "W/m²", -1800, List.of("9999"))
                .put(Quantity.WIND, "field 22", "m/s", 0, List.of("999"))
                .put(Quantity.CLOUD, "field 23", "tenths", 0, List.of("99"))
                .build();
    }

    static Epw read(Path file, Faults faults) throws WeatherFileException {
        List<CsvLine> lines = CsvLine.readAll(file, ',', faults);
        faults.throwIfAny();
        requireHourly(lines, faults);
        faults.throwIfAny();
        List<String> location = lines.get(0).cells();
        var place = new Place(
                number(location, 7, -90, 90, faults),
                number(location, 8, -180, 180, faults),
                number(location, 10, -430, 5500, faults));
        var zone = ZoneOffset.ofTotalSeconds((int) StrictMath.rint(3600 * number(location, 9, -12, 14, faults)));
        faults.throwIfAny();
        var table = new ArrayList<CsvLine>();
        table.add(new CsvLine(1, FIELDS));
        table.addAll(inOrder(lines.subList(HEADER_LINES, lines.size())));
        return new Epw(table, place, zone);
    }

    private static void requireHourly(List<CsvLine> lines, Faults faults) {
        if (lines.size() <= HEADER_LINES || !lines.get(0).cells().get(0).equals("LOCATION")) {
            faults.add("is not an EPW file: line 1 must begin with LOCATION, and rows follow line 8");
            return;
        }
        List<String> periods = lines.get(HEADER_LINES - 1).cells();
        if (periods.size() < 3 || !periods.get(2).equals("1")) {
            faults.add(HEADER_LINES, "DATA PERIODS: must promise 1 record an hour; bring the file to hours");
        }
    }

    private static double number(List<String> cells, int field, double low, double high, Faults faults) {
        String told = cells.size() < field ? "" : cells.get(field - 1);
        try {
            return Limits.require("field " + field, Double.parseDouble(told), low, high);
        } catch (IllegalArgumentException e) {
            faults.add(
                    1, "LOCATION, field " + field + ": \"" + told + "\" must be a number from " + low + " to " + high);
            return low;
        }
    }

    /** As they are, if all are of one year; else as one winter. Rows that make no sense stay for the table to name. */
    private static List<CsvLine> inOrder(List<CsvLine> rows) {
        String firstYear = rows.get(0).cells().get(0);
        boolean oneYear = rows.stream().allMatch(row -> row.cells().get(0).equals(firstYear));
        boolean broken = rows.stream().anyMatch(row -> row.cells().size() != FIELDS.size() || !isDated(row));
        if (oneYear || broken) {
            return rows;
        }
        int first = Integer.parseInt(firstYear);
        int year = Year.isLeap(first + 1) ? first - 1 : first;
        var winter = new ArrayList<CsvLine>();
        for (int half = 0; half < 2; half++) {
            for (CsvLine row : rows) {
                if ((Integer.parseInt(row.cells().get(1)) < JULY) == (half == 1)) {
                    winter.add(inYear(row, year + half));
                }
            }
        }
        return winter;
    }

    private static boolean isDated(CsvLine row) {
        return row.cells().get(0).matches("[0-9]{4}") && row.cells().get(1).matches("[0-9]{1,2}");
    }

    private static CsvLine inYear(CsvLine row, int year) {
        var cells = new ArrayList<>(row.cells());
        cells.set(0, Integer.toString(year));
        return new CsvLine(row.number(), cells);
    }
}
