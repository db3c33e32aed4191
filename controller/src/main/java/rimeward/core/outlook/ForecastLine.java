package rimeward.core.outlook;

import java.util.List;
import java.util.OptionalDouble;
import rimeward.core.outlook.Forecast.Point;

/** A forecast between its points: straight from one to the next, and at its ends held for a while. */
final class ForecastLine {
    /** Farther apart, points say nothing of the time between: a night could hide there, s. Own choice. */
    private static final long MOST_GAP_S = 21_600;

    /** For so long the first point counts before its time, and the last after it, s. Own choice. */
    private static final long HELD_S = 10_800;

    private final List<Point> points;

    ForecastLine(Forecast forecast) {
        points = forecast.points();
    }

    /** Temperature, °C, where something is said of that time. */
    OptionalDouble airC(long epochS) {
        int after = after(epochS);
        if (!isSaid(after, epochS)) {
            return OptionalDouble.empty();
        }
        Point from = points.get(Math.max(0, after - 1));
        Point to = points.get(Math.min(points.size() - 1, after));
        return OptionalDouble.of(from.airC() + part(from, to, epochS) * (to.airC() - from.airC()));
    }

    /** Dew point, °C, where both points beside that time say one. */
    OptionalDouble dewPointC(long epochS) {
        int after = after(epochS);
        Point from = points.get(Math.max(0, after - 1));
        Point to = points.get(Math.min(points.size() - 1, after));
        if (!isSaid(after, epochS)
                || from.dewPointC().isEmpty()
                || to.dewPointC().isEmpty()) {
            return OptionalDouble.empty();
        }
        double fromC = from.dewPointC().getAsDouble();
        return OptionalDouble.of(
                fromC + part(from, to, epochS) * (to.dewPointC().getAsDouble() - fromC));
    }

    /** Whether something is said of all the time between. */
    boolean covers(long fromEpochS, long untilEpochS) {
        for (int i = after(fromEpochS); i <= after(untilEpochS); i++) {
            if (i > 0 && i < points.size() && gapS(i) > MOST_GAP_S) {
                return false;
            }
        }
        return isSaid(after(fromEpochS), fromEpochS) && isSaid(after(untilEpochS), untilEpochS);
    }

    /** The last time that something is said of, s since 1970 UTC. */
    long endsEpochS() {
        return points.get(points.size() - 1).epochS() + HELD_S;
    }

    private boolean isSaid(int after, long epochS) {
        if (after == 0) {
            return points.get(0).epochS() - epochS <= HELD_S;
        }
        return after == points.size() ? epochS <= endsEpochS() : gapS(after) <= MOST_GAP_S;
    }

    private long gapS(int after) {
        return points.get(after).epochS() - points.get(after - 1).epochS();
    }

    /** Index of the first point later than this; as many as there are where none is. */
    private int after(long epochS) {
        int low = 0;
        int high = points.size();
        while (low < high) {
            int middle = (low + high) / 2;
            if (points.get(middle).epochS() > epochS) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }

    private static double part(Point from, Point to, long epochS) {
        return from.epochS() == to.epochS() ? 0 : (double) (epochS - from.epochS()) / (to.epochS() - from.epochS());
    }
}
