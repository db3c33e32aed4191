package rimeward.sim.weather;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where the weather is: geographic latitude (north positive) and longitude (east positive) in degrees, altitude in metres
 * above sea level.
 */
public record Place(double latitudeDeg, double longitudeDeg, double altitudeM) {
    private static final Pattern COMMENT =
            Pattern.compile("# *place: latitude (-?[0-9.]+), longitude (-?[0-9.]+), altitude (-?[0-9.]+) m");
    private static final Place NOWHERE = new Place(0, 0, 0); // stands in until the fault is thrown

    public Place {
        Limits.require("latitudeDeg", latitudeDeg, -90, 90);
        Limits.require("longitudeDeg", longitudeDeg, -180, 180);
        Limits.require("altitudeM", altitudeM, -430, 5500);
    }

    /**
     * The place that a weather file tells in a comment, {@code # place: latitude 54.40, longitude -110.28, altitude 544 m};
     * none, with a fault, if it does not.
     */
    static Place in(List<String> texts, Faults faults) {
        for (int i = 0; i < texts.size(); i++) {
            var told = COMMENT.matcher(texts.get(i));
            if (told.matches()) {
                return of(told, i + 1, faults);
            }
        }
        faults.add(
                "does not tell its place; write it into the file as a comment, \"# place: latitude 54.40, longitude -110.28,"
                        + " altitude 544 m\", or state it beside the file's name");
        return NOWHERE;
    }

    private static Place of(Matcher told, int line, Faults faults) {
        try {
            return new Place(
                    Double.parseDouble(told.group(1)),
                    Double.parseDouble(told.group(2)),
                    Double.parseDouble(told.group(3)));
        } catch (IllegalArgumentException e) {
            faults.add(line, "place: " + e.getMessage());
            return NOWHERE;
        }
    }
}
