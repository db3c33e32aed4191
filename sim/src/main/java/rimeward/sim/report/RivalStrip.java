package rimeward.sim.report;

import java.util.ArrayList;
import java.util.List;
import rimeward.sim.run.Comparison;
import rimeward.sim.run.Quantity;
import rimeward.sim.run.RunResult;
import rimeward.site.Site;
import rimeward.strip.ClockRow;
import rimeward.strip.Ground;
import rimeward.strip.Pen;
import rimeward.strip.PenRow;
import rimeward.strip.Row;
import rimeward.strip.Scale;
import rimeward.strip.Span;
import rimeward.strip.Strip;

/** A rival beside our law, small; all rivals on the same scale. */
final class RivalStrip {
    private static final int HEIGHT_PX = 120;

    private RivalStrip() {}

    static Strip of(Comparison comparison, RunResult rival) {
        Site site = comparison.site();
        Span span = Spans.of(comparison.header());
        TraceSeries ours = coldest(comparison.results().get(0));
        TraceSeries theirs = coldest(rival);
        List<Pen> pens = List.of(
                new Pen(comparison.results().get(0).law().name(), "ours", ours, "°C", 1),
                new Pen(rival.law().name(), "rival", theirs, "°C", 1));
        List<Row> rows = new ArrayList<>();
        rows.add(new PenRow(
                "Coldest bench, °C",
                scale(comparison),
                PenRow.SMALL,
                pens,
                List.of(NightStrip.floor(site, theirs)),
                List.of(),
                Alternative.rival(rival, site)));
        rows.addAll(MachineRows.heatSources(site, rival.trace(), span));
        rows.add(new ClockRow());
        return new Strip(span, new Ground(Spans.shades(rival.trace(), span), List.of()), rows);
    }

    private static Scale scale(Comparison comparison) {
        double leastC = comparison.site().floorC();
        double mostC = leastC;
        for (RunResult result : comparison.results()) {
            leastC = Math.min(leastC, coldest(result).least());
            mostC = Math.max(mostC, coldest(result).most());
        }
        return Scale.around(leastC - 1, Math.min(mostC + 1, comparison.site().floorC() + 16), HEIGHT_PX);
    }

    private static TraceSeries coldest(RunResult result) {
        return new TraceSeries(result.trace(), Quantity.COLDEST_BENCH_C);
    }
}
