package rimeward.core.outlook;

import java.util.Locale;
import java.util.OptionalDouble;

/** One line of what was learned, as words between spaces: numbers with fixed decimals, "-" for what is not known. */
final class Words {
    private static final String UNKNOWN = "-";

    private final String line;
    private final String[] words;

    /** @throws IllegalArgumentException if there are not as many words */
    Words(String line, int count) {
        this.line = line;
        words = line.split(" ", -1);
        if (words.length != count) {
            throw damaged();
        }
    }

    static String of(double value) {
        return String.format(Locale.ROOT, "%.6f", value);
    }

    static String of(OptionalDouble value) {
        return value.isPresent() ? of(value.getAsDouble()) : UNKNOWN;
    }

    boolean isKnown(int index) {
        return !words[index].equals(UNKNOWN);
    }

    /** @throws IllegalArgumentException if it is no finite number */
    double number(int index) {
        double value = Double.parseDouble(words[index]);
        if (!Double.isFinite(value)) {
            throw damaged();
        }
        return value;
    }

    OptionalDouble perhaps(int index) {
        return isKnown(index) ? OptionalDouble.of(number(index)) : OptionalDouble.empty();
    }

    long whole(int index) {
        return Long.parseLong(words[index]);
    }

    int count(int index) {
        return Integer.parseInt(words[index]);
    }

    private IllegalArgumentException damaged() {
        return new IllegalArgumentException("\"" + line + "\" is not a line of what was learned");
    }
}
