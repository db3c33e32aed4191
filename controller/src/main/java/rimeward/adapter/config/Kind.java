package rimeward.adapter.config;

/**
 * A kind of value that a key may have: how to read it and how to ask for it. The common ones are in {@link Kinds}.
 *
 * @param expected what a good value is, to end the sentence "it must be …": {@code a number between 10 and 45}
 * @param standIn handed out in place of a bad value so that reading can go on; never reaches a result
 * @param reading from the parser's value (String, Long, Double, Boolean or one of java.time)
 */
public record Kind<T>(String expected, T standIn, Reading<T> reading) {

    /** Turns the parser's value into ours. */
    @FunctionalInterface
    public interface Reading<T> {
        T read(Object value) throws Misread;
    }
}
