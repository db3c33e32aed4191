package rimeward.core.outlook;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * A night's lowest temperature from its evening, by the nights before: the lowest is regressed on the temperature two hours after sunset,
 * what is left of it on the dew point then. Source: Snyder &amp; de Melo-Abreu, "Frost protection: fundamentals, practice and economics",
 * FAO 2005, vol. 1, ch. 5. They train it on clear, calm nights; we have whatever nights there were, so the spread is wider.
 *
 * @param airC expected lowest, °C
 * @param spreadK standard deviation of that, K; grows away from the evenings that were seen
 * @param nights learned from so many
 */
public record NightMinimum(double airC, double spreadK, int nights) {
    /** With fewer nights nothing is predicted. Own choice: as many as in the worked example of the source. */
    public static final int LEAST_NIGHTS = 10;

    /** No night is known better than this, K: sensors and puffs of air. Own choice. */
    private static final double LEAST_SPREAD_K = 0.3;

    /** Empty where fewer than {@link #LEAST_NIGHTS} evenings were seen. The dew point counts where this evening's and enough others' are known. */
    public static Optional<NightMinimum> after(OutsideAir.Seen evening, List<KnownNight> nights) {
        List<Pair> pairs = nights.stream()
                .filter(night -> night.evening() instanceof OutsideAir.Seen)
                .map(night -> new Pair((OutsideAir.Seen) night.evening(), night.lowestC()))
                .toList();
        List<Pair> damp = pairs.stream()
                .filter(pair -> pair.evening.dewPointC().isPresent())
                .toList();
        OptionalDouble dewPointC = evening.dewPointC();
        if (dewPointC.isPresent() && damp.size() >= LEAST_NIGHTS) {
            return Optional.of(byAirAndDew(evening.airC(), dewPointC.getAsDouble(), damp));
        }
        return pairs.size() >= LEAST_NIGHTS ? Optional.of(byAir(evening.airC(), pairs)) : Optional.empty();
    }

    private record Pair(OutsideAir.Seen evening, double lowestC) {}

    private static NightMinimum byAirAndDew(double eveningC, double dewPointC, List<Pair> nights) {
        double[] airC = column(nights, night -> night.evening.airC());
        double[] dewC = column(nights, night -> night.evening.dewPointC().orElseThrow());
        double[] lowestC = column(nights, Pair::lowestC);
        Line onAir = Line.through(airC, lowestC);
        double[] leftK = onAir.residuals(airC, lowestC);
        Line onDew = Line.through(dewC, leftK);
        double predictedC = onAir.at(eveningC) + onDew.at(dewPointC);
        double farOff = onAir.farOff(eveningC) + onDew.farOff(dewPointC);
        return of(predictedC, onDew.residuals(dewC, leftK), 3, farOff);
    }

    private static NightMinimum byAir(double eveningC, List<Pair> nights) {
        double[] airC = column(nights, night -> night.evening.airC());
        double[] lowestC = column(nights, Pair::lowestC);
        Line onAir = Line.through(airC, lowestC);
        return of(onAir.at(eveningC), onAir.residuals(airC, lowestC), 2, onAir.farOff(eveningC));
    }

    /** The deviation of Student's distribution, so that few nights are not taken for many. */
    private static NightMinimum of(double predictedC, double[] leftK, int fitted, double farOff) {
        double squares = 0;
        for (double each : leftK) {
            squares += each * each;
        }
        int nights = leftK.length;
        double variance = squares / (nights - fitted) * (1 + 1.0 / nights + farOff);
        double student = (nights - fitted) / (nights - fitted - 2.0);
        return new NightMinimum(
                predictedC, StrictMath.max(LEAST_SPREAD_K, StrictMath.sqrt(variance * student)), nights);
    }

    private static double[] column(List<Pair> nights, ToDoubleFunction<Pair> value) {
        return nights.stream().mapToDouble(value).toArray();
    }
}
