package rimeward.adapter.forecast;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import rimeward.core.outlook.Forecast;

/** What a forecast can say. What no weather does is refused with the place where it stands. All limits are our own choice. */
final class Plausible {
    /** A file or reply is no longer than this, bytes; nine days by the hour with everything in it take a quarter. */
    static final int MOST_BYTES = 1 << 20;

    /** Ten days by the quarter of an hour. */
    static final int MOST_POINTS = 1000;

    private static final double LEAST_C = -60;
    private static final double MOST_C = 50;
    private static final double LEAST_DEW_C = -80;
    private static final double DEW_ABOVE_K = 1; // rounded apart by others; more is a mistake
    private static final double MOST_WIND_M_PER_S = 80;
    private static final long MOST_BEFORE_S = 2 * 86_400;
    private static final long MOST_AHEAD_S = 20 * 86_400;

    private Plausible() {}

    /** @param where for people, as the beginning of "line 7: …" */
    static Forecast.Point point(
            String where,
            long epochS,
            double airC,
            OptionalDouble dewPointC,
            OptionalDouble windMPerS,
            OptionalDouble cloudFraction)
            throws Unreadable {
        within(where, "air °C", airC, LEAST_C, MOST_C);
        if (dewPointC.isPresent()) {
            within(where, "dew point °C", dewPointC.getAsDouble(), LEAST_DEW_C, MOST_C);
            if (dewPointC.getAsDouble() > airC + DEW_ABOVE_K) {
                throw new Unreadable(where + ": the dew point, " + shown(dewPointC.getAsDouble())
                        + " °C, is above the air, " + shown(airC) + " °C");
            }
        }
        if (windMPerS.isPresent()) {
            within(where, "wind m/s", windMPerS.getAsDouble(), 0, MOST_WIND_M_PER_S);
        }
        if (cloudFraction.isPresent()) {
            within(where, "cloud (0 to 1)", cloudFraction.getAsDouble(), 0, 1);
        }
        OptionalDouble dewC = dewPointC.isPresent()
                ? OptionalDouble.of(StrictMath.min(dewPointC.getAsDouble(), airC))
                : OptionalDouble.empty();
        return new Forecast.Point(epochS, airC, dewC, windMPerS, cloudFraction);
    }

    static Forecast forecast(String source, long issuedEpochS, List<Forecast.Point> points) throws Unreadable {
        if (points.isEmpty() || points.size() > MOST_POINTS) {
            throw new Unreadable("it has " + points.size() + " points; 1 to " + MOST_POINTS + " can be used");
        }
        try {
            Forecast forecast = new Forecast(source, issuedEpochS, points);
            long firstS = points.get(0).epochS();
            long lastS = points.get(points.size() - 1).epochS();
            if (firstS < issuedEpochS - MOST_BEFORE_S || lastS > issuedEpochS + MOST_AHEAD_S) {
                throw new Unreadable(
                        "its points reach from more than 2 days before it was issued, or to more than 20 days"
                                + " after: look at the years");
            }
            return forecast;
        } catch (IllegalArgumentException e) {
            throw new Unreadable(String.valueOf(e.getMessage()));
        }
    }

    private static void within(String where, String what, double value, double least, double most) throws Unreadable {
        if (!(value >= least && value <= most)) { // written so that NaN is refused too
            throw new Unreadable(where + ": " + what + " is " + shown(value) + "; it must lie between " + shown(least)
                    + " and " + shown(most));
        }
    }

    private static String shown(double value) {
        return String.format(Locale.ROOT, "%.4g", value);
    }
}
