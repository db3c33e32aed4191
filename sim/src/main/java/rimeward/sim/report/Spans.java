package rimeward.sim.report;

import java.util.ArrayList;
import java.util.List;
import rimeward.sim.run.Quantity;
import rimeward.sim.run.ScenarioHeader;
import rimeward.sim.run.Trace;
import rimeward.strip.Span;
import rimeward.strip.Stretch;

/** The time axis of a run, and what is shaded on it. */
final class Spans {
    /** Darker than this is night: a bright full moon is far below, the first grey of dawn above. From memory. */
    private static final double NIGHT_W_PER_M2 = 1;

    private Spans() {}

    static Span of(ScenarioHeader header) {
        return new Span(header.startEpochS(), header.endEpochS(), header.offset());
    }

    static List<Stretch> shades(Trace trace, Span span) {
        List<Stretch> all = new ArrayList<>(Spells.shaded(
                "night", trace, span.endS(), row -> trace.at(Quantity.SUN_W_PER_M2, row) < NIGHT_W_PER_M2));
        all.addAll(Spells.shaded("outage", trace, span.endS(), row -> !trace.isPowered(row)));
        all.addAll(Spells.shaded("door", trace, span.endS(), trace::isDoorOpen));
        return all;
    }
}
