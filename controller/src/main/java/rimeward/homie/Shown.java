package rimeward.homie;

import rimeward.site.Degrees;

/** What a property shows at one moment, and what it takes to show it anew: a line should not be busy with noise. */
sealed interface Shown {
    /** Nothing is believed, or there is nothing to say: the topic is deleted. */
    record Nothing() implements Shown {}

    /**
     * A text.
     *
     * @param key another key is told at once; another text under the same key after {@link #SAME_KEY_MS} only
     */
    record Text(String key, String text) implements Shown {}

    /**
     * A number that is told anew once it lies a step or more from the one told last.
     *
     * @param value finite
     */
    record Amount(double value, double step, int decimals) implements Shown {}

    /** Numbers within a sentence may be this old, ms. Own choice. */
    long SAME_KEY_MS = 300_000;

    /** A temperature is told anew once it has moved so far, K: twice what a fair sensor's noise is. Own choice. */
    double TEMPERATURE_STEP_K = 0.15;

    Shown NOTHING = new Nothing();

    static Shown text(String text) {
        return new Text(text, text);
    }

    static Shown word(Enum<?> constant) {
        return text(Words.of(constant));
    }

    static Shown yesNo(boolean yes) {
        return text(yes ? "true" : "false");
    }

    /** Nothing where the value is no number. */
    static Shown number(double value, double step, int decimals) {
        return Double.isFinite(value) ? new Amount(value, step, decimals) : NOTHING;
    }

    /** A temperature in the grower's own degrees. */
    static Shown temperature(Degrees degrees, double tempC) {
        return number(degrees.of(tempC), degrees.ofSpan(TEMPERATURE_STEP_K), 1);
    }

    static Shown whole(long value) {
        return text(Long.toString(value));
    }
}
