package rimeward.strip;

import java.util.List;
import java.util.Locale;

/**
 * A ruled panel with lines.
 *
 * @param title at its top left, with the unit
 * @param step columns of the strip that count as one: 1, or {@link #SMALL} for a small drawing
 * @param says what it shows, in words
 */
public record PenRow(
        String title, Scale scale, int step, List<Pen> pens, List<Limit> limits, List<Note> notes, String says)
        implements Row {
    /** For a strip of half a page's width. */
    public static final int SMALL = 4;

    private static final double BASELINE_PX = 4;
    private static final int LETTER_PX = 11;

    public PenRow {
        pens = List.copyOf(pens);
        limits = List.copyOf(limits);
        notes = List.copyOf(notes);
    }

    @Override
    public int heightPx() {
        return scale.heightPx();
    }

    @Override
    public void paper(Span span, Markup to) {
        rules(to);
        Shapes.stretched(to, scale.heightUnits(), "data-low", plain(scale.low()), "data-high", plain(scale.high()));
        for (Limit limit : limits) {
            to.leaf("path", "class", "hatch " + limit.kind(), "d", Hatching.path(span, scale, limit));
        }
        for (Pen pen : pens) {
            to.leaf(
                    "path",
                    "class",
                    "pen " + pen.kind(),
                    "data-name",
                    pen.name(),
                    "data-unit",
                    pen.unit(),
                    "data-decimals",
                    Integer.toString(pen.decimals()),
                    "d",
                    Curve.path(span, scale, pen.series(), step));
        }
        to.close();
        limits.forEach(limit -> Shapes.level(to, "limit " + limit.kind(), scale.px(limit.value())));
        notes.forEach(note -> note(span, note, to));
        Shapes.label(to, "title", "6", LETTER_PX + 2, title);
    }

    private void rules(Markup to) {
        StringBuilder fine = new StringBuilder();
        StringBuilder bold = new StringBuilder();
        for (int i = 1; low(i) < scale.high() - scale.rule() / 2; i++) {
            (isLabelled(low(i)) ? bold : fine)
                    .append("M0 ")
                    .append(scale.units(low(i)))
                    .append("h")
                    .append(Span.COLUMNS);
        }
        Shapes.stretched(to, scale.heightUnits());
        to.leaf("path", "class", "fine", "d", fine.toString());
        to.leaf("path", "class", "bold", "d", bold.toString()).close();
    }

    private double low(int rule) {
        return scale.low() + rule * scale.rule();
    }

    private boolean isLabelled(double value) {
        double times = value / scale.label();
        return Math.abs(times - Math.rint(times)) < 1e-6;
    }

    private void note(Span span, Note note, Markup to) {
        double yPx = scale.px(note.value());
        String x = span.percent(note.epochS());
        boolean late = span.column(note.epochS()) > Span.COLUMNS * 3 / 5;
        if (note.value() <= scale.high() && note.value() >= scale.low()) {
            to.leaf("circle", "class", "ring", "cx", x, "cy", Shapes.px(yPx), "r", "4");
        }
        to.put(
                "text",
                note.text(),
                "class",
                "note",
                "x",
                x,
                "dx",
                late ? "-9" : "9",
                "y",
                Shapes.px(besidePx(yPx)),
                "text-anchor",
                late ? "end" : "start");
    }

    /** Below the point; above it at the lower edge, and below the title at the upper edge. */
    private double besidePx(double yPx) {
        boolean low = yPx > heightPx() - 2 * LETTER_PX;
        return low ? yPx - BASELINE_PX : Math.max(2 * LETTER_PX + BASELINE_PX, yPx + LETTER_PX + BASELINE_PX);
    }

    /** Limits have their names there; numbers that would touch one give way. */
    @Override
    public void gutter(Span span, Markup to) {
        int decimals = scale.label() < 1 ? 1 : 0;
        for (int i = 0; low(i) < scale.high() + scale.rule() / 2; i++) {
            double yPx = scale.px(low(i));
            boolean inside = yPx > LETTER_PX && yPx < heightPx() - BASELINE_PX;
            if (isLabelled(low(i)) && inside && limits.stream().noneMatch(limit -> isNear(limit, yPx))) {
                Shapes.gutterLabel(to, "scale", yPx + BASELINE_PX, number(low(i), decimals));
            }
        }
        for (Limit limit : limits) {
            double yPx = scale.px(limit.value());
            Shapes.gutterLabel(to, "limit-text " + limit.kind(), yPx + BASELINE_PX, limit.text());
        }
    }

    private boolean isNear(Limit limit, double yPx) {
        return Math.abs(scale.px(limit.value()) - yPx) < LETTER_PX;
    }

    /** For the script. */
    private static String plain(double value) {
        return String.format(Locale.ROOT, "%.2f", value);
    }

    /** With a true minus sign, and no minus before a zero. */
    private static String number(double value, int decimals) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", Math.abs(value));
        boolean isZero = text.chars().allMatch(c -> c == '0' || c == '.');
        return value < 0 && !isZero ? "\u2212" + text : text;
    }
}
