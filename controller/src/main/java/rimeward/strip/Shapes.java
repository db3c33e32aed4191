package rimeward.strip;

import java.util.Locale;

/** Small pieces that several rows draw. */
final class Shapes {
    private Shapes() {}

    /** Opens a drawing that fills its row and is stretched across: columns by drawing units. */
    static void stretched(Markup to, int heightUnits, String... more) {
        String[] attributes = new String[4 + more.length];
        attributes[0] = "viewBox";
        attributes[1] = "0 0 " + Span.COLUMNS + " " + heightUnits;
        attributes[2] = "preserveAspectRatio";
        attributes[3] = "none";
        System.arraycopy(more, 0, attributes, 4, more.length);
        to.open("svg", attributes);
    }

    static void upright(Markup to, String kind, String x) {
        to.leaf("line", "class", kind, "x1", x, "x2", x, "y1", "0", "y2", "100%");
    }

    static void level(Markup to, String kind, double yPx) {
        to.leaf("line", "class", kind, "x1", "0", "x2", "100%", "y1", px(yPx), "y2", px(yPx));
    }

    static void label(Markup to, String kind, String x, double yPx, String text) {
        to.put("text", text, "class", kind, "x", x, "y", px(yPx));
    }

    /** In the gutter: right-aligned, a little off the paper. */
    static void gutterLabel(Markup to, String kind, double yPx, String text) {
        to.put("text", text, "class", kind, "x", "100%", "dx", "-6", "y", px(yPx), "text-anchor", "end");
    }

    static String px(double value) {
        String text = String.format(Locale.ROOT, "%.1f", value);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }
}
