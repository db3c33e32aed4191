package rimeward.sizing;

import java.util.List;

/** Heater stages that can be bought, each on its own relay. */
public sealed interface Stages {
    /** Together, W. */
    double totalW();

    /**
     * Some.
     *
     * @param eachW the largest first, W
     */
    record Some(List<Double> eachW) implements Stages {
        public Some {
            eachW = List.copyOf(eachW);
        }

        @Override
        public double totalW() {
            return eachW.stream().mapToDouble(Double::doubleValue).sum();
        }

        double largestW() {
            return eachW.get(0);
        }
    }

    /** There are none that would do. */
    record None() implements Stages {
        @Override
        public double totalW() {
            return 0;
        }
    }
}
