package rimeward.sizing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import rimeward.site.Circuit;

/**
 * Which heater stages to buy, and whether the circuit carries them.
 *
 * @param wantedW what they should give together, W
 * @param circuit what they would hang on
 * @param wanted the fewest that give it, whatever the circuit
 * @param fitting the fewest that give it on this circuit
 * @param most the most that this circuit carries, where it cannot carry enough
 */
public record HeaterPlan(double wantedW, Circuit circuit, Stages wanted, Stages fitting, Stages most) {
    /** A plug's fuse, A; BS 1363, from memory. */
    public static final double PLUG_A = 13;

    /** Sizes that shops have, W. Common practice, no source. */
    private static final List<Double> SIZES_W = List.of(500.0, 750.0, 1000.0, 1500.0, 2000.0, 2500.0, 3000.0);

    /** Ratings of small breakers, A; IEC 60898, from memory. */
    private static final List<Double> BREAKERS_A = List.of(6.0, 10.0, 16.0, 20.0, 25.0, 32.0, 40.0, 50.0, 63.0);

    /** Two, so that heat is left when one fails; more than four only alike; eight, beyond which it is no work for plug-in heaters. */
    private static final int FEWEST = 2;

    private static final int MIXED = 4;
    private static final int MOST = 8;

    /** The smallest sum first; of equal sums the one whose largest stage is smallest. */
    private static final Comparator<Stages.Some> SMALLEST =
            Comparator.comparingDouble(Stages.Some::totalW).thenComparingDouble(Stages.Some::largestW);

    public static HeaterPlan of(double wantedW, Circuit circuit) {
        double plugW = plugW(circuit);
        return new HeaterPlan(
                wantedW,
                circuit,
                fewest(wantedW, Double.MAX_VALUE, plugW),
                fewest(wantedW, circuit.limitW(), plugW),
                strongest(circuit.limitW(), plugW));
    }

    public boolean fits() {
        return fitting instanceof Stages.Some;
    }

    /** What one plug may carry for hours on end, W: no stage is larger. */
    public static double plugW(Circuit circuit) {
        return circuit.voltageV() * Math.min(PLUG_A, circuit.fuseA()) * circuit.continuousFactor();
    }

    /** The smallest breaker that would carry the wanted stages for hours on end, A; empty where none here would. */
    public OptionalDouble breakerA() {
        double drawnW = wanted.totalW() + circuit.otherLoadW();
        if (wanted instanceof Stages.None) {
            return OptionalDouble.empty();
        }
        return BREAKERS_A.stream()
                .mapToDouble(Double::doubleValue)
                .filter(fuseA -> fuseA * circuit.voltageV() * circuit.continuousFactor() >= drawnW)
                .findFirst();
    }

    private static Stages fewest(double leastW, double mostW, double plugW) {
        for (int count = FEWEST; count <= MOST; count++) {
            Optional<Stages.Some> found = sets(count, plugW)
                    .filter(set -> set.totalW() >= leastW && set.totalW() <= mostW)
                    .min(SMALLEST);
            if (found.isPresent()) {
                return found.get();
            }
        }
        return new Stages.None();
    }

    private static Stages strongest(double mostW, double plugW) {
        Stages best = new Stages.None();
        for (int count = FEWEST; count <= MIXED; count++) {
            Stages here = sets(count, plugW)
                    .filter(set -> set.totalW() <= mostW)
                    .max(Comparator.comparingDouble(Stages.Some::totalW).thenComparing(SMALLEST.reversed()))
                    .<Stages>map(set -> set)
                    .orElse(best);
            best = here.totalW() > best.totalW() ? here : best;
        }
        return best;
    }

    /** So many stages of the sizes that a plug may carry. */
    private static Stream<Stages.Some> sets(int count, double plugW) {
        List<Double> sizesW = SIZES_W.stream().filter(sizeW -> sizeW <= plugW).toList();
        return count > MIXED
                ? sizesW.stream().map(sizeW -> new Stages.Some(Collections.nCopies(count, sizeW)))
                : mixed(count, sizesW).map(Stages.Some::new);
    }

    private static Stream<List<Double>> mixed(int count, List<Double> sizesW) {
        if (count == 0) {
            return Stream.of(List.of());
        }
        return sizesW.stream()
                .flatMap(largestW -> mixed(
                                count - 1,
                                sizesW.stream()
                                        .filter(sizeW -> sizeW <= largestW)
                                        .toList())
                        .map(rest -> {
                            List<Double> all = new ArrayList<>(List.of(largestW));
                            all.addAll(rest);
                            return all;
                        }));
    }
}
