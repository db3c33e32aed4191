package rimeward.adapter.config;

/**
 * One thing wrong with the settings, in parts that read as one sentence.
 *
 * @param where file and line
 * @param what the key, and its value where it has one: {@code targets.hot_C = 5}
 * @param problem a predicate with the limit: {@code must lie between 10 and 45}
 * @param remedy what to do: {@code raise it to at least 10}
 */
public record Fault(Origin where, String what, String problem, String remedy) {
    @Override
    public String toString() {
        return where + ": " + what + " " + problem + "; " + remedy;
    }
}
