package rimeward.sim.report;

import java.util.List;
import java.util.Locale;
import rimeward.report.Say;
import rimeward.sim.run.Quantity;
import rimeward.sim.run.ScenarioHeader;
import rimeward.sim.run.Trace;
import rimeward.strip.Markup;
import rimeward.strip.Span;
import rimeward.strip.Stamp;

/** The strip's lines as a table, at whole steps of time. */
final class HourTable {
    private static final long[] STEPS_S = {900, 1800, 3600, 7200, 10_800, 21_600, 43_200, 86_400, 172_800, 604_800};
    private static final int MOST_ROWS = 80;
    private static final List<Quantity> COLUMNS = List.of(
            Quantity.OUTSIDE_C, Quantity.COLDEST_BENCH_C, Quantity.FILM_C, Quantity.DEW_POINT_C, Quantity.RH_PERCENT);

    private HourTable() {}

    static void draw(ScenarioHeader header, Trace trace, Markup to) {
        Span span = Spans.of(header);
        to.open("div", "class", "scroll", "tabindex", "0", "role", "region", "aria-label", "The strip as a table");
        to.open("table", "class", "hours").open("thead").open("tr").put("th", "time", "scope", "col");
        for (Quantity column : COLUMNS) {
            to.put("th", column.says() + ", " + column.unit(), "scope", "col");
        }
        to.put("th", "machines, W", "scope", "col")
                .put("th", "warm duty", "scope", "col")
                .close()
                .close();
        to.open("tbody");
        long stepS = step(span);
        int row = 0;
        for (long at = span.firstRuleS(stepS); at < span.endS(); at += stepS) {
            while (row + 1 < trace.rows() && trace.epochS(row + 1) <= at) {
                row++;
            }
            line(span, at, trace, row, to);
        }
        to.close().close().close();
    }

    private static long step(Span span) {
        for (long step : STEPS_S) {
            if (span.lengthS() / step <= MOST_ROWS) {
                return step;
            }
        }
        return span.lengthS() / MOST_ROWS;
    }

    private static void line(Span span, long at, Trace trace, int row, Markup to) {
        String when = Stamp.day(at, span.offset()) + " " + Stamp.clock(at, span.offset());
        to.line().open("tr").put("th", when, "scope", "row");
        for (Quantity column : COLUMNS) {
            to.put("td", Say.number(trace.at(column, row), column == Quantity.RH_PERCENT ? 0 : 1));
        }
        double sumW = 0;
        for (int i = 0; i < trace.machines(); i++) {
            sumW += trace.powerW(i, row);
        }
        to.put("td", Say.number(sumW, 0));
        String holder = trace.holder(row).name().toLowerCase(Locale.ROOT).replace('_', ' ');
        to.put("td", trace.isPowered(row) ? holder : "no mains").close();
    }
}
