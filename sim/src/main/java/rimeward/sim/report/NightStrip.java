package rimeward.sim.report;

import java.util.ArrayList;
import java.util.List;
import rimeward.report.Say;
import rimeward.sim.run.Comparison;
import rimeward.sim.run.Quantity;
import rimeward.sim.run.RunResult;
import rimeward.sim.run.Trace;
import rimeward.site.Site;
import rimeward.strip.ClockRow;
import rimeward.strip.Ground;
import rimeward.strip.Limit;
import rimeward.strip.MarkRow;
import rimeward.strip.Note;
import rimeward.strip.Pen;
import rimeward.strip.PenRow;
import rimeward.strip.Row;
import rimeward.strip.Scale;
import rimeward.strip.Span;
import rimeward.strip.Stamp;
import rimeward.strip.Strip;

/** One run in full: temperatures, damp, machines, who held the warm duty, and what happened when. */
final class NightStrip {
    private static final int TEMPERATURE_PX = 280;
    /** Sunny days may be cut off, so that the nights are legible. */
    private static final double MOST_ABOVE_FLOOR_K = 12;

    private static final int HUMIDITY_PX = 110;
    private static final int DEW_PX = 150;

    private final Site site;
    private final RunResult result;
    private final Trace trace;
    private final Span span;
    private final Marks marks;

    private NightStrip(Comparison comparison, RunResult result) {
        this.site = comparison.site();
        this.result = result;
        this.trace = result.trace();
        this.span = Spans.of(comparison.header());
        this.marks = Marks.of(comparison.header(), result);
    }

    static Strip of(Comparison comparison, RunResult result) {
        NightStrip night = new NightStrip(comparison, result);
        List<Row> rows = new ArrayList<>();
        rows.add(MarkRow.of(night.span, night.marks.all()));
        rows.add(night.temperature());
        rows.add(new ClockRow());
        rows.addAll(MachineRows.each(night.site, night.trace, night.span));
        rows.add(MachineRows.duty(night.trace, night.span));
        rows.add(new ClockRow());
        rows.add(night.humidity());
        rows.add(night.dewPoint());
        rows.add(new ClockRow());
        return new Strip(night.span, ground(night.trace, night.span, night.marks), rows);
    }

    static Ground ground(Trace trace, Span span, Marks marks) {
        return new Ground(Spans.shades(trace, span), marks.all());
    }

    private PenRow temperature() {
        TraceSeries coldest = new TraceSeries(trace, Quantity.COLDEST_BENCH_C);
        TraceSeries outside = new TraceSeries(trace, Quantity.OUTSIDE_C);
        TraceSeries seen = new TraceSeries(trace, Quantity.JUDGED_C);
        double leastC = Math.min(coldest.least(), outside.least()) - 1;
        double warmestC = Math.max(coldest.most(), outside.most());
        double mostC = Math.min(Math.max(warmestC, site.floorC()) + 2, site.floorC() + MOST_ABOVE_FLOOR_K);
        List<Pen> pens = List.of(
                new Pen("outside", "outside", outside, "°C", 1),
                new Pen("controller's view", "seen", seen, "°C", 1),
                new Pen("coldest bench", "coldest", coldest, "°C", 1));
        return new PenRow(
                "Temperature, °C",
                Scale.around(leastC, mostC, TEMPERATURE_PX),
                1,
                pens,
                List.of(floor(site, coldest)),
                warmestC > mostC ? List.of(lowest(), beyond(coldest)) : List.of(lowest()),
                Alternative.temperature(site, result, outside, span));
    }

    static Limit floor(Site site, TraceSeries coldest) {
        return new Limit("floor " + Say.number(site.floorC(), 1), "floor", site.floorC(), Limit.Side.BELOW, coldest);
    }

    private Note lowest() {
        long atS = result.summary().lowestEpochS();
        String text = Say.degrees(result.summary().lowestBenchC()) + " at " + Stamp.clock(atS, span.offset());
        return new Note(atS, result.summary().lowestBenchC(), text);
    }

    /** Where the pen leaves the paper on a sunny day. */
    private static Note beyond(TraceSeries coldest) {
        return new Note(coldest.epochS(coldest.mostRow()), coldest.most(), "↑ to " + Say.degrees(coldest.most()));
    }

    private PenRow humidity() {
        TraceSeries rh = new TraceSeries(trace, Quantity.RH_PERCENT);
        double target = site.targets().rhPercent();
        Limit limit = new Limit("target " + Say.number(target, 0), "target", target, Limit.Side.ABOVE, rh);
        double least = Math.min(rh.least(), target) - 5;
        double most = Math.min(100, Math.max(rh.most(), target) + 5);
        return new PenRow(
                "Relative humidity, %",
                Scale.around(least, most, HUMIDITY_PX),
                1,
                List.of(new Pen("humidity", "rh", rh, "%", 0)),
                List.of(limit),
                List.of(),
                Alternative.humidity(site, result, rh));
    }

    private PenRow dewPoint() {
        TraceSeries dew = new TraceSeries(trace, Quantity.DEW_POINT_C);
        TraceSeries film = new TraceSeries(trace, Quantity.FILM_C);
        TraceSeries coldest = new TraceSeries(trace, Quantity.COLDEST_BENCH_C);
        double leastC = Math.min(Math.min(dew.least(), film.least()), coldest.least()) - 1;
        double mostC = Math.max(Math.max(dew.most(), film.most()), coldest.most()) + 2;
        List<Pen> pens = List.of(
                new Pen("film", "film", film, "°C", 1),
                new Pen("dew point", "dew", dew, "°C", 1),
                new Pen("coldest bench", "coldest", coldest, "°C", 1));
        return new PenRow(
                "Dew point beside film and bench, °C",
                Scale.around(leastC, mostC, DEW_PX),
                1,
                pens,
                List.of(),
                List.of(),
                Alternative.dewPoint(result));
    }
}
