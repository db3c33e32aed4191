package rimeward.strip;

import java.util.List;

/** What lies under every row of a strip: shaded stretches, rules of time, and a line for each mark. */
public record Ground(List<Stretch> stretches, List<Mark> marks) {
    public Ground {
        stretches = List.copyOf(stretches);
        marks = List.copyOf(marks);
    }

    void draw(Span span, Markup to) {
        for (Stretch stretch : stretches) {
            to.leaf(
                    "rect",
                    "class",
                    stretch.kind(),
                    "x",
                    span.percent(stretch.fromS()),
                    "width",
                    span.percent(stretch.fromS(), stretch.toS()),
                    "height",
                    "100%");
        }
        TimeRules rules = TimeRules.of(span);
        rule(span, rules.fineS(), "fine uprights", to);
        rule(span, rules.labelS(), "bold uprights", to);
        for (Mark mark : marks) {
            Shapes.upright(to, mark.kind(), span.percent(mark.epochS()));
        }
    }

    /** One path for all rules of a kind, in a drawing that is stretched across. */
    private static void rule(Span span, long stepS, String kind, Markup to) {
        StringBuilder path = new StringBuilder();
        for (long at = span.firstRuleS(stepS); at < span.endS(); at += stepS) {
            path.append('M').append(span.column(at)).append(" 0V1");
        }
        Shapes.stretched(to, 1);
        to.leaf("path", "class", kind, "d", path.toString()).close();
    }
}
