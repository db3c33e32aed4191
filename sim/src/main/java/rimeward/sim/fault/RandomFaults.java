package rimeward.sim.fault;

import java.util.ArrayList;
import java.util.List;

/**
 * Makes plans of faults by chance, the same for the same seed.
 *
 * @param kinds to choose from
 * @param sensors ids a sensor fault may strike
 * @param machines ids a machine fault may strike
 * @param perDay mean number of faults a day
 * @param leastS shortest, s
 * @param mostS longest, s; short ones are commoner
 */
public record RandomFaults(
        List<FaultKind> kinds,
        List<String> sensors,
        List<String> machines,
        double perDay,
        double leastS,
        double mostS) {
    private static final double S_PER_DAY = 86_400;

    public RandomFaults {
        kinds = List.copyOf(kinds);
        sensors = List.copyOf(sensors);
        machines = List.copyOf(machines);
        if (kinds.isEmpty() || !(perDay >= 0) || !(leastS > 0) || !(mostS >= leastS)) {
            throw new IllegalArgumentException(
                    "random faults need a kind, perDay of 0 or more and 0 < leastS <= mostS; got " + kinds + ", "
                            + perDay + ", " + leastS + ", " + mostS);
        }
    }

    public FaultPlan plan(long seed, double lengthS) {
        SeededStream chance = SeededStream.named(seed, "faults");
        List<Fault> faults = new ArrayList<>();
        double expected = perDay * lengthS / S_PER_DAY;
        long number = (long) (expected + chance.nextDouble());
        for (long i = 0; i < number; i++) {
            faults.add(fault(chance, chance.nextDouble() * lengthS));
        }
        return new FaultPlan(faults);
    }

    private Fault fault(SeededStream chance, double atS) {
        FaultKind kind = kinds.get(chance.below(kinds.size()));
        double part = chance.nextDouble();
        double lastsS = kind.isMomentary() ? 0 : leastS + (mostS - leastS) * part * part;
        double magnitude = kind.usualMagnitude() * chance.between(0.5, 2);
        boolean turned = kind.leastMagnitude() < 0 && chance.below(2) == 1;
        return new Fault(atS, kind, target(kind, chance), lastsS, turned ? -magnitude : magnitude);
    }

    private String target(FaultKind kind, SeededStream chance) {
        if (!kind.needsTarget()) {
            return "";
        }
        List<String> targets = kind.isOfSensor() ? sensors : machines;
        return targets.get(chance.below(targets.size()));
    }
}
