package rimeward.sim.sweep;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.stream.Collectors;

/** Writes TOML, line by line; numbers with six significant digits, the same on any JDK. For one thread. */
final class Toml {
    private static final MathContext DIGITS = new MathContext(6);

    private final StringBuilder out = new StringBuilder();

    static String number(double value) {
        BigDecimal rounded = new BigDecimal(value).round(DIGITS).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }

    Toml table(String name) {
        out.append(out.isEmpty() ? "" : "\n").append('[').append(name).append("]\n");
        return this;
    }

    Toml element(String name) {
        return table('[' + name + ']');
    }

    Toml text(String key, String value) {
        return line(key, quoted(value));
    }

    Toml texts(String key, List<String> values) {
        return line(key, values.stream().map(Toml::quoted).collect(Collectors.joining(", ", "[", "]")));
    }

    Toml yesNo(String key, boolean value) {
        return line(key, Boolean.toString(value));
    }

    Toml whole(String key, long value) {
        return line(key, Long.toString(value));
    }

    Toml real(String key, double value) {
        return line(key, number(value));
    }

    Toml reals(String key, List<Double> values) {
        return line(key, values.stream().map(Toml::number).collect(Collectors.joining(", ", "[", "]")));
    }

    /** Seconds, whole. */
    Toml length(String key, double lengthS) {
        return text(key, Math.round(lengthS) + "s");
    }

    Toml line(String key, String value) {
        out.append(key).append(" = ").append(value).append('\n');
        return this;
    }

    private static String quoted(String text) {
        return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"").replace("\n", "\\n") + '"';
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
