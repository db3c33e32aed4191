package rimeward.json;

import java.util.Collection;
import java.util.Locale;
import java.util.Map;

/** Writes JSON (RFC 8259) in one line, members in the order given. */
public final class JsonText {
    /** A hole in a list of numbers. */
    public static final Object HOLE = new Object();

    private JsonText() {}

    /**
     * What it stands for.
     *
     * @param value a map (its keys are names), a collection, a text, a boolean, or a number (a double must be finite, and is
     *     rounded to 3 decimals; whole and big ones keep their digits), or {@link #HOLE}
     * @throws IllegalArgumentException if it is something else
     */
    public static String of(Object value) {
        StringBuilder out = new StringBuilder();
        write(out, value);
        return out.toString();
    }

    private static void write(StringBuilder out, Object value) {
        if (value instanceof Map<?, ?> map) {
            object(out, map);
        } else if (value instanceof Collection<?> list) {
            array(out, list);
        } else if (value instanceof CharSequence text) {
            string(out, text);
        } else if (value instanceof Boolean
                || (value instanceof Number && !(value instanceof Double || value instanceof Float))) {
            out.append(value);
        } else if (value == HOLE) {
            out.append("null");
        } else if (value instanceof Double number && Double.isFinite(number)) {
            out.append(Decimal.of(number, 3));
        } else {
            throw new IllegalArgumentException("JSON has no " + value);
        }
    }

    private static void object(StringBuilder out, Map<?, ?> map) {
        String mark = "{";
        for (Map.Entry<?, ?> member : map.entrySet()) {
            out.append(mark);
            string(out, String.valueOf(member.getKey()));
            out.append(':');
            write(out, member.getValue());
            mark = ",";
        }
        out.append(map.isEmpty() ? "{}" : "}");
    }

    private static void array(StringBuilder out, Collection<?> list) {
        String mark = "[";
        for (Object each : list) {
            out.append(mark);
            write(out, each);
            mark = ",";
        }
        out.append(list.isEmpty() ? "[]" : "]");
    }

    private static void string(StringBuilder out, CharSequence text) {
        out.append('"');
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '"' || c == '\\') {
                out.append('\\').append(c);
            } else if (c < ' ') {
                out.append(String.format(Locale.ROOT, "\\u%04x", (int) c));
            } else {
                out.append(c);
            }
        }
        out.append('"');
    }
}
