package rimeward.strip;

import java.util.ArrayDeque;
import java.util.Deque;

/** Writes HTML and SVG, escaping everything that is handed to it but {@link #raw}. For one thread. */
public final class Markup {
    private final StringBuilder out = new StringBuilder(1 << 16);
    private final Deque<String> open = new ArrayDeque<>();

    /** Opens an element; attributes come as name, value, name, value. */
    public Markup open(String element, String... attributes) {
        start(element, attributes);
        out.append('>');
        open.push(element);
        return this;
    }

    public Markup close() {
        out.append("</").append(open.pop()).append('>');
        return this;
    }

    /** An element without content. */
    public Markup leaf(String element, String... attributes) {
        start(element, attributes);
        out.append("/>");
        return this;
    }

    /** An element with nothing but text in it. */
    public Markup put(String element, String text, String... attributes) {
        return open(element, attributes).text(text).close();
    }

    public Markup text(String text) {
        escape(text);
        return this;
    }

    /** Our own markup, style or script, as it is. Never for anything that came from a file. */
    public Markup raw(String markup) {
        out.append(markup);
        return this;
    }

    public Markup line() {
        out.append('\n');
        return this;
    }

    private void start(String element, String... attributes) {
        if (attributes.length % 2 != 0) {
            throw new IllegalArgumentException("attribute without a value in <" + element + ">");
        }
        out.append('<').append(element);
        for (int i = 0; i < attributes.length; i += 2) {
            out.append(' ').append(attributes[i]).append("=\"");
            escape(attributes[i + 1]);
            out.append('"');
        }
    }

    /** Characters that XML forbids become a visible stand-in, so that a picture stays readable whatever a name contains. */
    private void escape(String text) {
        text.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                case '\'' -> out.append("&#39;");
                default -> out.appendCodePoint(isXml(c) ? c : 0xFFFD);
            }
        });
    }

    private static boolean isXml(int c) {
        boolean isControl = c < 0x20 ? c != '\n' && c != '\t' : c >= 0x7F && c < 0xA0;
        boolean isHalfOrNone = (c >= 0xD800 && c < 0xE000) || c == 0xFFFE || c == 0xFFFF;
        return !isControl && !isHalfOrNone;
    }

    /** What was written; every element must be closed. */
    public String done() {
        if (!open.isEmpty()) {
            throw new IllegalStateException("not closed: " + open);
        }
        return out.toString();
    }
}
