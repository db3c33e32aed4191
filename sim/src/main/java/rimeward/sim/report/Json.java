package rimeward.sim.report;

import java.util.Locale;

/** Writes JSON with two blanks of indent; names and values in the order given. For one thread. */
final class Json {
    private final StringBuilder out = new StringBuilder();
    private String indent = "\n";
    private boolean first = true;

    /** Writes what stands inside of braces or brackets. */
    interface Inside {
        void write();
    }

    Json object(Inside inside) {
        return nested('{', '}', inside);
    }

    Json array(Inside inside) {
        return nested('[', ']', inside);
    }

    private Json nested(char open, char close, Inside inside) {
        out.append(open);
        String outer = indent;
        indent = outer + "  ";
        first = true;
        inside.write();
        indent = outer;
        out.append(first ? "" : outer).append(close);
        first = false;
        return this;
    }

    /** Begins the next member of an object; its value must follow. */
    Json name(String name) {
        return element().string(name).raw(": ");
    }

    /** Begins the next element of an array; its value must follow. */
    Json element() {
        out.append(first ? "" : ",").append(indent);
        first = false;
        return this;
    }

    Json member(String name, String value) {
        return name(name).string(value);
    }

    Json member(String name, long value) {
        return name(name).raw(Long.toString(value));
    }

    Json member(String name, boolean value) {
        return name(name).raw(Boolean.toString(value));
    }

    Json member(String name, double value, int decimals) {
        return name(name).raw(Fixed.of(value, decimals));
    }

    Json tiny(String name, double value) {
        return name(name).raw(Fixed.tiny(value));
    }

    Json raw(String text) {
        out.append(text);
        return this;
    }

    Json string(String text) {
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
        return this;
    }

    @Override
    public String toString() {
        return out + "\n";
    }
}
