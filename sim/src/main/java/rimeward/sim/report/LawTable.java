package rimeward.sim.report;

import java.util.List;
import rimeward.sim.run.Comparison;
import rimeward.sim.run.RunResult;
import rimeward.strip.Markup;

/** The comparison as a table of the page: lines are measures, columns are laws. */
final class LawTable {
    private LawTable() {}

    static void draw(Comparison comparison, Markup to) {
        List<RunResult> results = comparison.results();
        to.open("div", "class", "scroll", "tabindex", "0", "role", "region", "aria-label", "Comparison of laws");
        to.open("table", "class", "laws");
        head(results, to);
        to.open("tbody");
        for (Measure measure : Measures.of(comparison)) {
            to.line().open("tr").open("th", "scope", "row").text(measure.label());
            if (!measure.unit().isEmpty()) {
                to.put("span", ", " + measure.unit(), "class", "unit");
            }
            to.put("span", measure.says(), "class", "says").close();
            for (RunResult result : results) {
                cell(measure, result, results, to);
            }
            to.close();
        }
        to.close().close().close();
        legend(results, to);
    }

    private static void head(List<RunResult> results, Markup to) {
        to.open("thead").open("tr").put("td", "");
        for (RunResult result : results) {
            to.open("th", "scope", "col");
            to.put("span", result.law().name());
            to.close();
        }
        to.close().close();
    }

    private static void cell(Measure measure, RunResult result, List<RunResult> results, Markup to) {
        String text = measure.text(result);
        switch (Standing.of(measure, result, results)) {
            case BEST ->
                to.open("td")
                        .put("span", text, "class", "best")
                        .put("span", " best", "class", "unseen")
                        .close();
            case WORST ->
                to.open("td")
                        .put("span", text, "class", "worst")
                        .put("span", " worst", "class", "unseen")
                        .close();
            case NEITHER -> to.put("td", text);
        }
    }

    private static void legend(List<RunResult> results, Markup to) {
        if (results.size() > 1) {
            to.open("p", "class", "key", "aria-hidden", "true");
            to.put("span", "boxed", "class", "best").text(" best, ");
            to.put("span", "underlined", "class", "worst").text(" worst. ");
            to.text(
                    "Cost and electricity are judged only among laws that held the floor: letting plants freeze is always cheap.");
            to.close();
        }
        to.open("dl", "class", "law-names");
        for (RunResult result : results) {
            to.put("dt", result.law().name());
            to.put("dd", result.law().says() + (result.law().guarded() ? "" : " (without Rimeward's guard)"));
        }
        to.close();
    }
}
