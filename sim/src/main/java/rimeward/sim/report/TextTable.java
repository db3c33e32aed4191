package rimeward.sim.report;

import java.util.ArrayList;
import java.util.List;
import rimeward.sim.run.Comparison;
import rimeward.sim.run.RunResult;

/** The comparison for a terminal: lines are measures, columns are laws. */
public final class TextTable {
    private static final int MOST_LAWS_ACROSS = 5;
    private static final int LEAST_COLUMN = 11;
    private static final String BEST = "+";
    private static final String WORST = "-";
    private static final String GREEN = "\u001B[32m";
    private static final String RED = "\u001B[31m";
    private static final String PLAIN = "\u001B[0m";

    private final Comparison comparison;
    private final List<Measure> measures;
    private final boolean inColour;

    private TextTable(Comparison comparison, boolean inColour) {
        this.comparison = comparison;
        this.measures = Measures.of(comparison);
        this.inColour = inColour;
    }

    /**
     * The table, ending with a line break; laws in blocks that fit 100 columns.
     *
     * @param inColour whether to colour the marks; they stand as signs either way
     */
    public static String of(Comparison comparison, boolean inColour) {
        return new TextTable(comparison, inColour).write();
    }

    private String write() {
        StringBuilder out = new StringBuilder();
        List<RunResult> results = comparison.results();
        for (int from = 0; from < results.size(); from += MOST_LAWS_ACROSS) {
            block(results.subList(from, Math.min(results.size(), from + MOST_LAWS_ACROSS)), out);
            out.append('\n');
        }
        if (results.size() > 1) {
            out.append(
                    BEST + " best, " + WORST + " worst; cost and electricity only among laws that held the floor.\n");
        }
        return out.toString();
    }

    private void block(List<RunResult> results, StringBuilder out) {
        int labelWidth =
                measures.stream().mapToInt(m -> label(m).length()).max().orElse(0);
        List<Integer> widths = new ArrayList<>();
        out.append(" ".repeat(labelWidth));
        for (RunResult result : results) {
            String name = cut(result.law().name());
            widths.add(Math.max(LEAST_COLUMN, name.length() + 2));
            out.append(right(name, widths.get(widths.size() - 1) - 1)).append(' ');
        }
        endLine(out);
        out.append("-".repeat(labelWidth + widths.stream().mapToInt(w -> w).sum()))
                .append('\n');
        for (Measure measure : measures) {
            out.append(left(label(measure), labelWidth));
            for (int i = 0; i < results.size(); i++) {
                cell(measure, results.get(i), widths.get(i), out);
            }
            endLine(out);
        }
    }

    private void cell(Measure measure, RunResult result, int width, StringBuilder out) {
        out.append(right(measure.text(result).replace('\u2212', '-'), width - 1));
        switch (Standing.of(measure, result, comparison.results())) {
            case BEST -> out.append(coloured(BEST, GREEN));
            case WORST -> out.append(coloured(WORST, RED));
            case NEITHER -> out.append(' ');
        }
    }

    private String coloured(String text, String colour) {
        return inColour ? colour + text + PLAIN : text;
    }

    private static String label(Measure measure) {
        return measure.unit().isEmpty() ? measure.label() : measure.label() + ", " + measure.unit();
    }

    private static String cut(String name) {
        return name.length() <= 18 ? name : name.substring(0, 17) + "…";
    }

    private static void endLine(StringBuilder out) {
        int end = out.length();
        while (end > 0 && out.charAt(end - 1) == ' ') {
            end--;
        }
        out.setLength(end);
        out.append('\n');
    }

    private static String left(String text, int width) {
        return text + " ".repeat(Math.max(0, width - text.length()));
    }

    private static String right(String text, int width) {
        return " ".repeat(Math.max(0, width - text.length())) + text;
    }
}
