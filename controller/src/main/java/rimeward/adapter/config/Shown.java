package rimeward.adapter.config;

/** How values look in messages. */
final class Shown {
    private static final int LONGEST = 60;

    private Shown() {}

    static String value(Object value) {
        if (value instanceof String text) {
            String cut = text.length() > LONGEST ? text.substring(0, LONGEST) + "…" : text;
            return '"' + cut.replace("\n", "\\n") + '"';
        }
        return value instanceof Double number ? number(number) : String.valueOf(value);
    }

    /** As a person would write it: 4 rather than 4.0, nan rather than NaN. */
    static String number(double value) {
        if (value == StrictMath.rint(value) && Math.abs(value) < 1e15) {
            return Long.toString((long) value);
        }
        return Double.isNaN(value)
                ? "nan"
                : Double.isInfinite(value) ? (value < 0 ? "-inf" : "inf") : Double.toString(value);
    }
}
