package rimeward.core.outlook;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** A forecast as a few lines of plain text: the source, when it was made, and a line for each point; "-" is what was not said. */
public final class KeptForecast {
    private static final String VERSION = "forecast1";
    private static final int HEAD = 3;
    private static final int PARTS = 5;

    private KeptForecast() {}

    public static String write(Forecast forecast) {
        StringBuilder text = new StringBuilder(VERSION)
                .append('\n')
                .append(forecast.source().replace('\n', ' '))
                .append('\n')
                .append(forecast.issuedEpochS())
                .append('\n');
        for (Forecast.Point point : forecast.points()) {
            text.append(String.format(
                    Locale.ROOT,
                    "%d %.3f %s %s %s\n",
                    point.epochS(),
                    point.airC(),
                    text(point.dewPointC()),
                    text(point.windMPerS()),
                    text(point.cloudFraction())));
        }
        return text.toString();
    }

    private static String text(OptionalDouble value) {
        return value.isPresent() ? String.format(Locale.ROOT, "%.3f", value.getAsDouble()) : "-";
    }

    /** @throws IllegalArgumentException if it is not what {@link #write} writes */
    public static Forecast read(String text) {
        List<String> lines = text.lines().toList();
        if (lines.size() <= HEAD || !lines.get(0).equals(VERSION)) {
            throw new IllegalArgumentException("this is no forecast that this program kept");
        }
        List<Forecast.Point> points = new ArrayList<>();
        for (String line : lines.subList(HEAD, lines.size())) {
            String[] part = line.split(" ", -1);
            if (part.length != PARTS) {
                throw new IllegalArgumentException("\"" + line + "\" is no hour of a forecast");
            }
            points.add(new Forecast.Point(
                    Long.parseLong(part[0]),
                    Double.parseDouble(part[1]),
                    value(part[2]),
                    value(part[3]),
                    value(part[4])));
        }
        return new Forecast(lines.get(1), Long.parseLong(lines.get(2)), points);
    }

    private static OptionalDouble value(String text) {
        return text.equals("-") ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(text));
    }
}
