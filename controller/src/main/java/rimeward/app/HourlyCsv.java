package rimeward.app;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import rimeward.core.outlook.Forecast;

/** A forecast as a plain table for {@code tonight}: {@code time,air °C[,dew-point °C]}, times by ISO 8601; without an offset by the place's clock. */
final class HourlyCsv {
    private static final double LEAST_C = -60;
    private static final double MOST_C = 50;

    private final Path file;
    private final ZoneId zone;
    private int number;

    private HourlyCsv(Path file, ZoneId zone) {
        this.file = file;
        this.zone = zone;
    }

    /** @throws IllegalArgumentException with file, line and remedy, if it cannot be used */
    static Forecast read(Path file, ZoneId zone) {
        return new HourlyCsv(file, zone).read();
    }

    private Forecast read() {
        List<Forecast.Point> points = new ArrayList<>();
        long madeS;
        try {
            madeS = Files.getLastModifiedTime(file).toInstant().getEpochSecond();
            for (String line : Files.readAllLines(file, StandardCharsets.UTF_8)) {
                number++;
                if (!line.isBlank() && !line.startsWith("#") && !isHeader(line)) {
                    points.add(later(points, point(line.split(",", -1))));
                }
            }
        } catch (IOException e) {
            throw new IllegalArgumentException(
                    file + ": cannot be read (" + e + "); name a CSV file: time,air °C,dew-point °C", e);
        }
        if (points.isEmpty()) {
            throw wrong("holds no line of weather", "write lines such as 2026-01-10T18:00Z,-2.5,-3.1");
        }
        return new Forecast(String.valueOf(file.getFileName()), madeS, points);
    }

    private boolean isHeader(String line) {
        boolean header = number == 1 && !Character.isDigit(line.charAt(0));
        if (header && (line.contains("°F") || line.contains("_F"))) {
            throw wrong("is in °F", "give °C");
        }
        return header;
    }

    private Forecast.Point later(List<Forecast.Point> before, Forecast.Point point) {
        if (!before.isEmpty() && point.epochS() <= before.get(before.size() - 1).epochS()) {
            throw wrong("is not later than the line before", "put the lines in order of time");
        }
        return point;
    }

    private Forecast.Point point(String[] cells) {
        if (cells.length < 2 || cells.length > 3) {
            throw wrong("has " + cells.length + " cells, not 2 or 3", "write time,air °C,dew-point °C");
        }
        double airC = number("air", cells[1]);
        boolean dewKnown = cells.length == 3 && !cells[2].isBlank();
        OptionalDouble dewPointC = dewKnown ? OptionalDouble.of(number("dew point", cells[2])) : OptionalDouble.empty();
        return new Forecast.Point(
                epochS(cells[0].strip()), airC, dewPointC, OptionalDouble.empty(), OptionalDouble.empty());
    }

    private long epochS(String text) {
        try {
            return text.matches(".*(Z|[+-]\\d\\d(:?\\d\\d)?)$")
                            && text.contains("T")
                            && text.indexOf('T') < text.length() - 6
                    ? OffsetDateTime.parse(text).toEpochSecond()
                    : LocalDateTime.parse(text).atZone(zone).toEpochSecond();
        } catch (DateTimeException e) {
            throw wrong("has the time \"" + text + "\"", "write it as 2026-01-10T18:00Z");
        }
    }

    private double number(String what, String text) {
        try {
            double value = Double.parseDouble(text.strip());
            if (value >= LEAST_C && value <= MOST_C) {
                return value;
            }
        } catch (NumberFormatException e) {
            // told below, with what is allowed
        }
        throw wrong(what + " is \"" + text.strip() + "\"", "give °C between " + LEAST_C + " and " + MOST_C);
    }

    private IllegalArgumentException wrong(String what, String remedy) {
        return new IllegalArgumentException(file + ":" + number + ": " + what + "; " + remedy);
    }
}
