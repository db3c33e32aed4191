package rimeward.sizing;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoublePredicate;
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

    /** Two, so that heat is left when one fails; eight, beyond which it is no work for plug-in heaters. Own choices. */
    private static final int FEWEST = 2;

    private static final int MOST = 8;

    public static HeaterPlan of(double wantedW, Circuit circuit) {
        Stages wanted = fewest(wantedW, circuit, totalW -> true);
        Stages fitting = fewest(wantedW, circuit, totalW -> totalW <= circuit.limitW());
        return new HeaterPlan(wantedW, circuit, wanted, fitting, strongest(circuit));
    }

    public boolean fits() {
        return fitting instanceof Stages.Alike;
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

    private static Stages fewest(double wantedW, Circuit circuit, DoublePredicate carries) {
        double plugW = plugW(circuit);
        for (int count = FEWEST; count <= MOST; count++) {
            for (double eachW : SIZES_W) {
                double totalW = count * eachW;
                if (eachW <= plugW && totalW >= wantedW && carries.test(totalW)) {
                    return new Stages.Alike(count, eachW);
                }
            }
        }
        return new Stages.None();
    }

    private static Stages strongest(Circuit circuit) {
        double plugW = plugW(circuit);
        Stages best = new Stages.None();
        for (int count = FEWEST; count <= MOST; count++) {
            for (double eachW : SIZES_W) {
                double totalW = count * eachW;
                if (eachW <= plugW && totalW <= circuit.limitW() && totalW > best.totalW()) {
                    best = new Stages.Alike(count, eachW);
                }
            }
        }
        return best;
    }
}
