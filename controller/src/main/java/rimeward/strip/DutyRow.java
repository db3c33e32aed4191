package rimeward.strip;

import java.util.List;

/**
 * Who holds a duty: one line for each holder, one for the need, and a loud mark where it was needed and nobody held it.
 *
 * @param lines first at the top
 * @param handOvers when it passed from one holder to another
 * @param gaps when it was needed and nobody held it
 */
public record DutyRow(String title, List<Line> lines, List<Long> handOvers, List<Spell> gaps, String says)
        implements Row {
    private static final int TITLE_PX = 15;
    private static final int LINE_PX = 14;
    private static final int BAR_PX = 9;

    /**
     * One line of the row.
     *
     * @param name at its left
     * @param kind ink: the style sheet knows it
     */
    public record Line(String name, String kind, List<Spell> spells) {
        public Line {
            spells = List.copyOf(spells);
        }
    }

    public DutyRow {
        lines = List.copyOf(lines);
        handOvers = List.copyOf(handOvers);
        gaps = List.copyOf(gaps);
    }

    @Override
    public int heightPx() {
        return TITLE_PX + LINE_PX * lines.size() + 4;
    }

    @Override
    public void paper(Span span, Markup to) {
        for (int i = 0; i < lines.size(); i++) {
            int topPx = TITLE_PX + i * LINE_PX + (LINE_PX - BAR_PX) / 2;
            Shapes.level(to, "fine", topPx + BAR_PX / 2.0);
            to.open("svg", "y", Integer.toString(topPx), "height", Integer.toString(BAR_PX));
            Shapes.stretched(to, 1, "data-line", lines.get(i).name());
            to.leaf(
                    "path",
                    "class",
                    "bar " + lines.get(i).kind(),
                    "d",
                    bars(span, lines.get(i).spells()));
            to.close().close();
        }
        for (long at : handOvers) {
            handOver(span, at, to);
        }
        for (Spell gap : gaps) {
            to.leaf(
                    "rect",
                    "class",
                    "gap",
                    "x",
                    span.percent(gap.fromS()),
                    "width",
                    span.percent(gap.fromS(), gap.toS()),
                    "height",
                    "100%");
        }
        Shapes.label(to, "lane", "6", TITLE_PX - 3, title);
    }

    /** A stroke from the first holder's line to the last's: below the line of the need. */
    private void handOver(Span span, long at, Markup to) {
        String x = span.percent(at);
        String from = Shapes.px(TITLE_PX + 1.5 * LINE_PX);
        String until = Shapes.px(TITLE_PX + (lines.size() - 0.5) * LINE_PX);
        to.leaf("line", "class", "handover", "x1", x, "x2", x, "y1", from, "y2", until);
    }

    /** At least a column wide, so that the shortest spell shows. */
    private static String bars(Span span, List<Spell> spells) {
        StringBuilder path = new StringBuilder();
        int drawnTo = -1;
        for (Spell spell : spells) {
            int from = Math.max(span.column(spell.fromS()), drawnTo);
            int to = Math.max(span.column(spell.toS()), from + (from > drawnTo ? 1 : 0));
            if (to > from) {
                path.append('M')
                        .append(from)
                        .append(" 0h")
                        .append(to - from)
                        .append("v1H")
                        .append(from)
                        .append('z');
                drawnTo = to;
            }
        }
        return path.toString();
    }

    @Override
    public void gutter(Span span, Markup to) {
        for (int i = 0; i < lines.size(); i++) {
            Shapes.gutterLabel(
                    to,
                    "scale",
                    TITLE_PX + (i + 1.0) * LINE_PX - 3,
                    lines.get(i).name());
        }
    }
}
