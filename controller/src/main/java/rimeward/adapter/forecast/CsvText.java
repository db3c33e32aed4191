package rimeward.adapter.forecast;

import java.util.ArrayList;
import java.util.List;
import rimeward.core.outlook.Forecast;

/**
 * A table whose header names quantities and units, in the words of the weather files: {@code time,air °C,dew-point °C,wind m/s,cloud %}. Lines
 * that begin with {@code #} are comments; one of them may say {@code # issued: 2026-01-10T12:00Z}. Columns of other names are for others.
 */
final class CsvText {
    private static final String ISSUED = "issued:";

    private CsvText() {}

    static Forecast read(String text, String source, long modifiedEpochS) throws Unreadable {
        long issuedS = modifiedEpochS;
        List<CsvColumns> header = new ArrayList<>(); // one, once it came
        List<Forecast.Point> points = new ArrayList<>();
        int number = 0;
        for (String line : (Iterable<String>) text.lines()::iterator) {
            number++;
            String where = "line " + number;
            if (line.startsWith("#")) {
                String comment = line.substring(1).strip();
                if (comment.startsWith(ISSUED)) {
                    String said = comment.substring(ISSUED.length()).strip();
                    issuedS = Members.time(where + ": issued", said);
                }
            } else if (!line.isBlank()) {
                if (header.isEmpty()) {
                    header.add(CsvColumns.of(where, line));
                } else if (points.size() < Plausible.MOST_POINTS) {
                    points.add(header.get(0).point(where, line));
                } else {
                    throw new Unreadable("it has more than " + Plausible.MOST_POINTS + " points");
                }
            }
        }
        return Plausible.forecast(source, issuedS, points);
    }
}
