package rimeward.adapter.forecast;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import rimeward.core.outlook.Forecast;
import rimeward.json.Excerpt;
import rimeward.json.Json;

/**
 * JSON in the shape in which a forecast is handed over by message: {@code {"issued": …, "spreadK": …, "points": [{"at": …, "outsideC": …}]}}.
 * In a file the spread may be left out (it is learned here anyway), and a point may also say dewPointC, windMPerS and cloudFraction.
 */
final class PointsText {
    private static final List<String> KNOWN = List.of("issued", "spreadK", "points");
    private static final List<String> KNOWN_OF_POINT =
            List.of("at", "outsideC", "dewPointC", "windMPerS", "cloudFraction");
    private static final double MOST_SPREAD_K = 20;

    private PointsText() {}

    static Forecast read(Json json, String source) throws Unreadable {
        only("the file", json, KNOWN);
        OptionalDouble spreadK = Members.find("the file", json, "spreadK");
        if (spreadK.isPresent() && !(spreadK.getAsDouble() >= 0 && spreadK.getAsDouble() <= MOST_SPREAD_K)) {
            throw new Unreadable("spreadK must lie between 0 and " + (int) MOST_SPREAD_K);
        }
        long issuedS = Members.time("the file", json, "issued");
        List<Forecast.Point> points = new ArrayList<>();
        for (Json each : Members.list(json, "points")) {
            points.add(point("point " + (points.size() + 1), each));
        }
        return Plausible.forecast(source, issuedS, points);
    }

    private static Forecast.Point point(String where, Json json) throws Unreadable {
        only(where, json, KNOWN_OF_POINT);
        return Plausible.point(
                where,
                Members.time(where, json, "at"),
                Members.number(where, json, "outsideC"),
                Members.find(where, json, "dewPointC"),
                Members.find(where, json, "windMPerS"),
                Members.find(where, json, "cloudFraction"));
    }

    /** A misspelt name would be lost without a word. */
    private static void only(String where, Json json, List<String> known) throws Unreadable {
        for (String name : json.names()) {
            if (!known.contains(name)) {
                throw new Unreadable(where + " has a member " + Excerpt.of(name)
                        + " that means nothing here; known are " + String.join(", ", known));
            }
        }
    }
}
