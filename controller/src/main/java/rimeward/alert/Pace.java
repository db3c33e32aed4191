package rimeward.alert;

import java.util.OptionalDouble;

/**
 * How often what stands is told again. Own choice: what endangers the plants wakes somebody until it is over; what may come to that
 * is told each hour; what only wants looking at twice a day; the rest once.
 *
 * <p>Who acknowledges knows of it and is left alone, for if it grows worse another alert says so. Only plants below their minimum
 * are told each hour all the same: nothing worse follows, and whoever acknowledged may have gone to sleep again.
 */
final class Pace {
    private static final double HOUR_S = 3600;

    private Pace() {}

    static OptionalDouble everyS(Severity severity, boolean acknowledged) {
        if (acknowledged) {
            return severity == Severity.EXTREME ? OptionalDouble.of(HOUR_S) : OptionalDouble.empty();
        }
        return switch (severity) {
            case EXTREME -> OptionalDouble.of(HOUR_S / 4);
            case SEVERE -> OptionalDouble.of(HOUR_S);
            case MODERATE -> OptionalDouble.of(12 * HOUR_S);
            case MINOR, UNKNOWN -> OptionalDouble.empty();
        };
    }
}
