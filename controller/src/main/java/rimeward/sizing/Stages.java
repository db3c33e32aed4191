package rimeward.sizing;

/** Heaters that can be bought: so many alike, each on its own relay. */
public sealed interface Stages {
    double totalW();

    record Alike(int count, double eachW) implements Stages {
        @Override
        public double totalW() {
            return count * eachW;
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
