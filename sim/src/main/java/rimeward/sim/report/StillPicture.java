package rimeward.sim.report;

import java.util.ArrayList;
import java.util.List;
import rimeward.report.Resource;
import rimeward.report.Say;
import rimeward.sim.run.Comparison;
import rimeward.sim.run.Quantity;
import rimeward.sim.run.RunResult;
import rimeward.strip.ClockRow;
import rimeward.strip.Ground;
import rimeward.strip.Markup;
import rimeward.strip.Pen;
import rimeward.strip.PenRow;
import rimeward.strip.Row;
import rimeward.strip.Scale;
import rimeward.strip.Span;
import rimeward.strip.Strip;

/** One SVG that says it all, for the front page of a repository: every law's coldest bench against the floor, our machines below. */
public final class StillPicture {
    private static final int WIDTH_PX = 1000;
    private static final int GUTTER_PX = 64;
    private static final int MARGIN_PX = 16;
    private static final int TITLE_PX = 30;
    private static final int LEGEND_PX = 24;
    private static final int TEMPERATURE_PX = 250;
    private static final double PX_PER_LETTER = 6.8;
    private static final int SAMPLE_PX = 30;
    private static final int MOST_RIVALS = 4;
    private static final double MOST_ABOVE_FLOOR_K = 9;

    private final Comparison comparison;
    private final RunResult first;
    private final Span span;
    private final List<Pen> pens = new ArrayList<>();

    private StillPicture(Comparison comparison) {
        this.comparison = comparison;
        this.first = comparison.results().get(0);
        this.span = Spans.of(comparison.header());
        pens.add(pen("outside", "outside", new TraceSeries(first.trace(), Quantity.OUTSIDE_C)));
        List<RunResult> rivals =
                comparison.results().subList(1, comparison.results().size());
        for (RunResult rival : rivals.subList(0, Math.min(MOST_RIVALS, rivals.size()))) {
            pens.add(pen(rival.law().name(), "rival rival" + pens.size(), coldest(rival)));
        }
        pens.add(pen(first.law().name(), "coldest", coldest(first)));
    }

    /** The picture, as a file of its own. */
    public static String of(Comparison comparison) {
        return new StillPicture(comparison).write();
    }

    private String write() {
        Markup inner = new Markup();
        int bottomPx = strip().still(GUTTER_PX, WIDTH_PX - MARGIN_PX, TITLE_PX + LEGEND_PX, inner) + MARGIN_PX / 2;
        String height = Integer.toString(bottomPx);
        Markup to = new Markup();
        to.open(
                "svg",
                "xmlns",
                "http://www.w3.org/2000/svg",
                "viewBox",
                "0 0 " + WIDTH_PX + " " + height,
                "role",
                "img",
                "aria-labelledby",
                "title words");
        to.line().put("title", comparison.header().title(), "id", "title");
        to.put("desc", Verdict.of(comparison, first).text(), "id", "words");
        to.line().raw("<style>\n").raw(Resource.text(Strip.class, "strip.css"));
        to.raw(Resource.text(StillPicture.class, "still.css")).raw("</style>").line();
        to.leaf("rect", "class", "ground", "width", "100%", "height", "100%");
        to.put("text", headline(), "class", "headline", "x", Integer.toString(MARGIN_PX), "y", "22");
        legend(to);
        return to.line().raw(inner.done()).close().line().done();
    }

    private String headline() {
        String floor = "floor " + Say.degrees(comparison.site().floorC());
        return comparison.header().title() + ": coldest bench under each law, " + floor;
    }

    private Strip strip() {
        List<Row> rows = new ArrayList<>();
        rows.add(new PenRow(
                "Coldest bench and outside, °C",
                scale(),
                1,
                pens,
                List.of(NightStrip.floor(comparison.site(), coldest(first))),
                List.of(),
                ""));
        rows.addAll(MachineRows.heatSources(comparison.site(), first.trace(), span));
        rows.add(MachineRows.duty(first.trace(), span));
        rows.add(new ClockRow());
        return new Strip(span, new Ground(Spans.shades(first.trace(), span), List.of()), rows);
    }

    private Scale scale() {
        double floorC = comparison.site().floorC();
        double leastC = floorC;
        double mostC = floorC;
        for (Pen pen : pens) {
            leastC = Math.min(leastC, ((TraceSeries) pen.series()).least());
            mostC = Math.max(mostC, ((TraceSeries) pen.series()).most());
        }
        return Scale.around(leastC - 0.5, Math.min(mostC + 2, floorC + MOST_ABOVE_FLOOR_K), TEMPERATURE_PX);
    }

    private void legend(Markup to) {
        double xPx = GUTTER_PX;
        int yPx = TITLE_PX + LEGEND_PX / 2;
        for (int i = pens.size() - 1; i >= 0; i--) {
            Pen pen = pens.get(i);
            String path = "M" + Math.round(xPx) + " " + yPx + "h" + SAMPLE_PX;
            to.leaf("path", "class", "pen " + pen.kind(), "d", path);
            xPx += SAMPLE_PX + 6;
            to.put(
                    "text",
                    pen.name(),
                    "class",
                    "name",
                    "x",
                    Long.toString(Math.round(xPx)),
                    "y",
                    Integer.toString(yPx + 4));
            xPx += pen.name().length() * PX_PER_LETTER + 18;
        }
    }

    private static Pen pen(String name, String kind, TraceSeries series) {
        return new Pen(name, kind, series, "°C", 1);
    }

    private static TraceSeries coldest(RunResult result) {
        return new TraceSeries(result.trace(), Quantity.COLDEST_BENCH_C);
    }
}
