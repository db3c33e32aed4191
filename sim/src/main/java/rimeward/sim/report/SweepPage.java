package rimeward.sim.report;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import rimeward.report.Paper;
import rimeward.report.Say;
import rimeward.sim.sweep.Broken;
import rimeward.sim.sweep.Measured;
import rimeward.sim.sweep.Spread;
import rimeward.sim.sweep.WinterLine;
import rimeward.strip.Markup;

/** A sweep's page: one file that needs no network and no script. */
public final class SweepPage {
    private static final List<String> COLUMNS =
            List.of("least", "5 %", "25 %", "median", "75 %", "95 %", "most", "mean");

    private final Spread spread;
    private final Markup to = new Markup();

    private SweepPage(Spread spread) {
        this.spread = spread;
    }

    public static String of(Spread spread) {
        return new SweepPage(spread).write();
    }

    private String write() {
        String title = Say.count(spread.winters(), "winter", "winters");
        Paper.begin(title + " – Rimeward sweep", to);
        to.line().open("header").open("div", "class", "form");
        to.put("p", "Rimeward – sweep record", "class", "maker").put("h1", title);
        to.open("dl");
        Paper.field("Each", Say.number(spread.days(), 0) + " days", to);
        Paper.field("Program", spread.build(), to);
        to.close().close().close();
        to.line().open("main");
        verdict();
        standings();
        Paper.section("spreads", "How the winters are spread", to);
        for (Measured measured : Measured.values()) {
            spread(measured);
        }
        to.close();
        troubles();
        to.close().line();
        return Paper.end(to);
    }

    private void verdict() {
        to.line().open("section", "class", "verdict", "aria-labelledby", "verdict");
        to.put(
                "h2",
                spread.isGood() ? "Held" : "Broken",
                "id",
                "verdict",
                "class",
                spread.isGood() ? "stamp" : "stamp bad");
        to.open("div");
        to.put(
                "p",
                spread.isGood()
                        ? "Every property held in every winter."
                        : Say.count(spread.failed().size(), "winter", "winters") + " broke a property.",
                "class",
                "floor");
        for (WinterLine winter : spread.failed()) {
            for (Broken broken : winter.broken()) {
                to.put("p", SweepTable.inWords(winter, broken));
            }
        }
        to.close().close();
    }

    private void standings() {
        Paper.section("laws", "The laws beside each other", to);
        table("Laws", List.of("floor held", "both held", "kWh more than ours", "damp hours more than ours"));
        for (Spread.Standing law : spread.standings()) {
            to.line().open("tr").put("th", law.law(), "scope", "row");
            to.put("td", String.valueOf(law.held())).put("td", String.valueOf(law.bothHeld()));
            to.put("td", median(law.dearerKWh())).put("td", median(law.damperH()));
            to.close();
        }
        to.close().close().close();
        to.put(
                "p",
                "Winters; the last two columns are medians over those in which both laws held the floor. "
                        + "Faults strike all laws alike; machines that are taken out of use for service are so under ours only.");
        to.close();
    }

    private static String median(OptionalDouble median) {
        return median.isPresent() ? Say.number(median.getAsDouble(), 1) : "–";
    }

    private void spread(Measured measured) {
        to.put("h3", measured.unit().isEmpty() ? measured.label() : measured.label() + ", " + measured.unit());
        table(measured.label(), COLUMNS);
        for (Spread.Line line : spread.lines()) {
            if (line.measured() == measured) {
                to.line().open("tr").put("th", line.law(), "scope", "row");
                SweepTable.values(line.spread()).forEach(value -> to.put("td", Say.number(value, measured.decimals())));
                to.close();
            }
        }
        to.close().close().close();
    }

    /** Opens a table as far as its first row. */
    private void table(String what, List<String> columns) {
        to.open("div", "class", "scroll", "tabindex", "0", "role", "region", "aria-label", what);
        to.open("table", "class", "laws spread").open("thead").open("tr").put("td", "");
        columns.forEach(column -> to.put("th", column, "scope", "col"));
        to.close().close().open("tbody");
    }

    private void troubles() {
        Paper.section("troubles", "What went wrong, in how many winters", to);
        to.open("dl", "class", "law-names");
        for (Map.Entry<String, Integer> trouble : spread.troubles().entrySet()) {
            to.put("dt", trouble.getKey()).put("dd", String.valueOf(trouble.getValue()));
        }
        to.close().close();
    }
}
