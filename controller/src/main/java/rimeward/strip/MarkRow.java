package rimeward.strip;

import java.util.ArrayList;
import java.util.List;

/** Flags above the strip: each mark's code, and its words where a wide screen has room. All marks stand in a list below the strip as well. */
public final class MarkRow implements Row {
    private static final int LINE_PX = 17;
    private static final int MOST_LINES = 5;
    private static final int WIDE_PX = 1040;
    private static final double PX_PER_LETTER = 6.6;
    private static final int MARGIN_PX = 16;

    private final List<Placed> placed;
    private final int lines;

    private record Placed(Mark mark, int line, boolean leftwards, boolean worded, double fromPx, double toPx) {
        boolean meets(Placed other) {
            return line == other.line && fromPx < other.toPx && toPx > other.fromPx;
        }
    }

    private MarkRow(List<Placed> placed) {
        this.placed = placed;
        this.lines = placed.stream().mapToInt(Placed::line).max().orElse(-1) + 1;
    }

    /**
     * Puts each mark on the first line where it fits: with its words if it can, else with its code alone, else not at all. Words that
     * stand already are not said again.
     */
    public static MarkRow of(Span span, List<Mark> marks) {
        List<Placed> placed = new ArrayList<>();
        for (Mark mark : marks) {
            boolean said = placed.stream()
                    .anyMatch(other -> other.worded() && other.mark().text().equals(mark.text()));
            if (span.contains(mark.epochS()) && (said || !place(span, mark, true, placed))) {
                place(span, mark, false, placed);
            }
        }
        return new MarkRow(placed);
    }

    private static boolean place(Span span, Mark mark, boolean worded, List<Placed> placed) {
        int letters = mark.code().length() + (worded ? mark.text().length() + 1 : 0);
        double widthPx = letters * PX_PER_LETTER + MARGIN_PX;
        double atPx = (double) span.column(mark.epochS()) * WIDE_PX / Span.COLUMNS;
        boolean leftwards = atPx + widthPx > WIDE_PX;
        for (int line = 0; line < MOST_LINES; line++) {
            double fromPx = leftwards ? atPx - widthPx : atPx;
            Placed here = new Placed(mark, line, leftwards, worded, fromPx, fromPx + widthPx);
            if (fromPx >= 0 && placed.stream().noneMatch(here::meets)) {
                placed.add(here);
                return true;
            }
        }
        return false;
    }

    @Override
    public int heightPx() {
        return lines == 0 ? 4 : lines * LINE_PX + 4;
    }

    @Override
    public String says() {
        return "";
    }

    @Override
    public void paper(Span span, Markup to) {
        for (Placed each : placed) {
            Mark mark = each.mark();
            to.open(
                    "text",
                    "class",
                    "flag " + mark.kind(),
                    "x",
                    span.percent(mark.epochS()),
                    "dx",
                    each.leftwards() ? "-4" : "4",
                    "y",
                    Integer.toString((each.line() + 1) * LINE_PX - 4),
                    "text-anchor",
                    each.leftwards() ? "end" : "start");
            to.put("tspan", mark.code(), "class", "code");
            if (each.worded()) {
                to.put("tspan", " " + mark.text(), "class", "wide");
            }
            to.close();
        }
    }

    @Override
    public void gutter(Span span, Markup to) {}
}
