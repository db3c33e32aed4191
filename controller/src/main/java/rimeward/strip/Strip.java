package rimeward.strip;

import java.util.List;

/** Rows with one time axis, as part of a page. Its look is in {@code strip.css}, the moving hair line in {@code strip.js}. */
public record Strip(Span span, Ground ground, List<Row> rows) {
    public Strip {
        rows = List.copyOf(rows);
    }

    /** Writes it as part of a page that has the style sheet. */
    public void draw(Markup to) {
        to.open(
                "div",
                "class",
                "strip",
                "data-from",
                Long.toString(span.startS()),
                "data-to",
                Long.toString(span.endS()),
                "data-offset",
                Integer.toString(span.offset().getTotalSeconds()));
        for (Row row : rows) {
            String height = Integer.toString(row.heightPx());
            to.line().open("svg", "class", "gutter", "height", height, "aria-hidden", "true");
            row.gutter(span, to);
            to.close();
            paper(row, height, to);
        }
        to.line().close();
    }

    private void paper(Row row, String height, Markup to) {
        String kind = row.isRuled() ? "paper" : "axis";
        if (row.says().isEmpty()) {
            to.open("svg", "class", kind, "height", height, "aria-hidden", "true");
        } else {
            to.open("svg", "class", kind, "height", height, "role", "img", "aria-label", row.says());
        }
        content(row, to);
        to.close();
    }

    private void content(Row row, Markup to) {
        if (row.isRuled()) {
            ground.draw(span, to);
        }
        row.paper(span, to);
    }

    /** Writes it as a picture's inner drawings, the top row at {@code topPx}; returns where it ends. */
    public int still(int gutterPx, int widthPx, int topPx, Markup to) {
        int yPx = topPx;
        for (Row row : rows) {
            place(0, gutterPx, yPx, row, "gutter", to);
            row.gutter(span, to);
            to.close();
            place(gutterPx, widthPx - gutterPx, yPx, row, row.isRuled() ? "paper" : "axis", to);
            if (row.isRuled()) {
                to.leaf("rect", "class", "sheet", "width", "100%", "height", "100%");
            }
            content(row, to);
            to.close().line();
            yPx += row.heightPx();
        }
        return yPx;
    }

    private static void place(int xPx, int widthPx, int yPx, Row row, String kind, Markup to) {
        to.open(
                "svg",
                "class",
                kind,
                "x",
                Integer.toString(xPx),
                "y",
                Integer.toString(yPx),
                "width",
                Integer.toString(widthPx),
                "height",
                Integer.toString(row.heightPx()));
    }
}
