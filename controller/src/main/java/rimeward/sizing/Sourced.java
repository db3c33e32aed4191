package rimeward.sizing;

/**
 * A number and where it comes from.
 *
 * @param from in words, for a person
 */
public record Sourced(double value, Basis basis, String from) {
    public boolean isAssumed() {
        return basis == Basis.ASSUMED;
    }
}
