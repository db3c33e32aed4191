package rimeward.sim.weather;

/** One wording for "this number cannot be". */
final class Limits {
    private Limits() {}

    /** Refuses a value outside {@code low…high}, and NaN with it. */
    static double require(String name, double value, double low, double high) {
        if (value >= low && value <= high) {
            return value;
        }
        throw new IllegalArgumentException(name + " is " + value + ", must be " + low + "…" + high);
    }
}
