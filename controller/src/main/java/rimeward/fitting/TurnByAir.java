package rimeward.fitting;

import java.util.Optional;
import rimeward.core.reading.Reading;

/**
 * By the bench's own rise and fall, where there is no meter: the thermostat went off where the air was warmest, and on where it was
 * coldest. The air lags, so both lie a little outside the thermostat's true marks.
 */
final class TurnByAir implements TurnFinder {
    /** Back from an extreme by this much before it counts; above a good sensor's noise and steps. Common practice, no source. */
    private static final double CERTAIN_K = 0.3;

    private enum Trend {
        UNKNOWN,
        RISING,
        FALLING
    }

    private record Point(double atS, double benchC) {}

    private Trend trend = Trend.UNKNOWN;
    private Point lowest = new Point(0, Double.POSITIVE_INFINITY);
    private Point highest = new Point(0, Double.NEGATIVE_INFINITY);

    @Override
    public Optional<Turn> look(double atS, double benchC, Reading powerW) {
        Point now = new Point(atS, benchC);
        lowest = benchC < lowest.benchC ? now : lowest;
        highest = benchC > highest.benchC ? now : highest;
        Optional<Turn> turn = Optional.empty();
        if (trend != Trend.FALLING && benchC <= highest.benchC - CERTAIN_K) {
            turn = found(false, highest);
            trend = Trend.FALLING;
            lowest = now;
        } else if (trend != Trend.RISING && benchC >= lowest.benchC + CERTAIN_K) {
            turn = found(true, lowest);
            trend = Trend.RISING;
            highest = now;
        }
        return turn;
    }

    /** The first extreme is only where watching began. */
    private Optional<Turn> found(boolean on, Point at) {
        return trend == Trend.UNKNOWN ? Optional.empty() : Optional.of(new Turn(on, at.atS, at.benchC));
    }

    @Override
    public String inWords() {
        return "by the air (no meter: the air lags, the true span is a little narrower)";
    }
}
