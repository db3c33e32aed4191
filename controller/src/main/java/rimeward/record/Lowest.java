package rimeward.record;

/** The lowest temperature of a while, if any was believed. */
public sealed interface Lowest {
    record Seen(double airC) implements Lowest {}

    record Unseen() implements Lowest {}

    /** The lower of what there was and one more, °C. */
    static Lowest of(Lowest before, double airC) {
        return before instanceof Seen seen && seen.airC() <= airC ? before : new Seen(airC);
    }
}
