package rimeward.sizing;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/**
 * Reads outside air out of a weather file: a table of comma-separated readings or of daily extremes whose header names quantity and unit
 * ({@code config/weather/README.md}), as {@code rimeward record … export} writes it too, or an EPW file.
 */
public final class WeatherText {
    private static final Pattern NUMBER = Pattern.compile("[-+]?([0-9]+[.]?[0-9]*|[.][0-9]+)([eE][-+]?[0-9]+)?");
    private static final List<String> MISSING = List.of("", "NA", "-9999", "-9999.0");
    private static final String BYTE_ORDER_MARK = "\uFEFF";

    /** More is several winters, whose costs one sheet would mix, s. */
    private static final long MOST_S = 400L * 86_400;

    /** At most this share of the time may lie in gaps. Own choice. */
    private static final double MOST_MISSING = 0.1;

    private static final int DATE_LENGTH = 10;
    private static final double LEAST_C = -80;
    private static final double MOST_C = 60;

    private WeatherText() {}

    /**
     * The file's lines as weather.
     *
     * @throws Refused with what is wrong, each with its line
     */
    public static Weather read(Iterator<String> lines) throws Refused {
        WeatherFaults faults = new WeatherFaults();
        Lines numbered = new Lines(lines);
        if (!numbered.next()) {
            throw new Refused(List.of("it is empty; it needs a header such as \"time,air °C\" and rows below"));
        }
        Rows rows = numbered.text().startsWith("LOCATION,")
                ? new EpwRows(numbered)
                : TableRows.of(cells(numbered.text()), numbered.number());
        while (numbered.next()) {
            rows.take(cells(numbered.text()), numbered.number(), faults);
        }
        faults.throwIfAny();
        Weather weather = rows.weather();
        requireUsable(weather.course());
        return weather;
    }

    private static void requireUsable(AirCourse course) throws Refused {
        if (course.size() < 2) {
            throw new Refused(
                    List.of("it has fewer than two rows with a temperature; give a file that covers a winter"));
        }
        if (course.spanS() > MOST_S) {
            throw new Refused(List.of("it spans " + course.spanS() / 86_400
                    + " days; at most 400 make one winter: cut it to one, say from July to June"));
        }
        long missingS = 0;
        for (int i = 1; i < course.size(); i++) {
            long lengthS = course.epochS(i) - course.epochS(i - 1);
            missingS += lengthS > Season.BRIDGED_S ? lengthS : 0;
        }
        if (missingS > MOST_MISSING * course.spanS()) {
            throw new Refused(List.of("gaps of more than 3 hours make up " + 100 * missingS / course.spanS()
                    + " % of its time; at most 10 % may be missing: fill them, or give another file"));
        }
    }

    /** One row after the other, to become weather. */
    interface Rows {
        void take(List<String> cells, int line, WeatherFaults faults);

        Weather weather() throws Refused;
    }

    /** Lines with their numbers, without comments and empty ones. */
    static final class Lines {
        private final Iterator<String> lines;
        private String text = "";
        private int number;

        Lines(Iterator<String> lines) {
            this.lines = lines;
        }

        boolean next() {
            while (lines.hasNext()) {
                text = lines.next();
                number++;
                if (number == 1 && text.startsWith(BYTE_ORDER_MARK)) {
                    text = text.substring(1);
                }
                if (!text.isBlank() && !text.startsWith("#")) {
                    return true;
                }
            }
            return false;
        }

        String text() {
            return text;
        }

        int number() {
            return number;
        }
    }

    /** Cells of a line; quotes are taken off, and a comma between them does not part. */
    static List<String> cells(String text) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '"') {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                cells.add(cell.toString().strip());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString().strip());
        return cells;
    }

    /** Where nothing was measured. */
    static boolean isMissing(String cell) {
        return MISSING.contains(cell);
    }

    /** A number as weather services write them; empty for anything else. */
    static OptionalDouble number(String cell) {
        return NUMBER.matcher(cell).matches() ? OptionalDouble.of(Double.parseDouble(cell)) : OptionalDouble.empty();
    }

    static boolean isPossible(double airC) {
        return airC >= LEAST_C && airC <= MOST_C;
    }

    /** ISO 8601, UTC unless it states an offset; a date alone is its midnight. Throws a {@link DateTimeException}. */
    static OffsetDateTime time(String cell) {
        if (cell.length() <= DATE_LENGTH) {
            return LocalDate.parse(cell).atStartOfDay().atOffset(ZoneOffset.UTC);
        }
        String iso = cell.substring(0, DATE_LENGTH) + 'T' + cell.substring(DATE_LENGTH + 1);
        boolean hasOffset =
                iso.endsWith("Z") || iso.lastIndexOf('+') > DATE_LENGTH || iso.lastIndexOf('-') > DATE_LENGTH;
        return hasOffset ? OffsetDateTime.parse(iso) : LocalDateTime.parse(iso).atOffset(ZoneOffset.UTC);
    }
}
