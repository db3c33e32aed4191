package rimeward.core.outlook;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What somebody says of the weather, hour by hour or finer, as it was said: for the place of the forecast and not for this tunnel's.
 *
 * @param source who says so, for people: a file's name, a host, "handed over"
 * @param issuedEpochS when it was made, s since 1970 UTC
 * @param points in order of time, at least one
 */
public record Forecast(String source, long issuedEpochS, List<Point> points) {
    /** @throws IllegalArgumentException if there is no point, or one is not later than the one before */
    public Forecast {
        points = List.copyOf(points);
        if (points.isEmpty()) {
            throw new IllegalArgumentException("a forecast needs at least one point");
        }
        for (int i = 1; i < points.size(); i++) {
            if (points.get(i).epochS() <= points.get(i - 1).epochS()) {
                throw new IllegalArgumentException("the forecast's points are not in order of time");
            }
        }
    }

    /**
     * One moment of it.
     *
     * @param epochS of when it speaks, s since 1970 UTC
     * @param airC air temperature, °C
     * @param dewPointC dew point, °C, where it is said
     * @param windMPerS mean wind, m/s, where it is said
     * @param cloudFraction share of the sky covered, 0 to 1, where it is said
     */
    public record Point(
            long epochS,
            double airC,
            OptionalDouble dewPointC,
            OptionalDouble windMPerS,
            OptionalDouble cloudFraction) {}
}
