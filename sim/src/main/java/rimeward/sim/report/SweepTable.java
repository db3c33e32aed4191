package rimeward.sim.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import rimeward.sim.sweep.Broken;
import rimeward.sim.sweep.Measured;
import rimeward.sim.sweep.Quantiles;
import rimeward.sim.sweep.Spread;
import rimeward.sim.sweep.WinterLine;

/** A sweep for a terminal. */
public final class SweepTable {
    private static final int LAW_WIDTH = 14;
    private static final int MOST_FAILED = 20;

    private SweepTable() {}

    /** The table, ending with a line break. */
    public static String of(Spread spread) {
        StringBuilder out = new StringBuilder();
        out.append(String.format(
                Locale.ROOT, "%d winters of %d days, program %s\n\n", spread.winters(), spread.days(), spread.build()));
        standings(spread, out);
        for (Measured measured : Measured.values()) {
            out.append(heading(measured));
            for (Spread.Line line : spread.lines()) {
                if (line.measured() == measured) {
                    out.append(row(line));
                }
            }
            out.append('\n');
        }
        failed(spread, out);
        return out.toString();
    }

    private static void standings(Spread spread, StringBuilder out) {
        out.append("law            floor held   both held   kWh more than ours   damp h more than ours\n");
        for (Spread.Standing standing : spread.standings()) {
            out.append(String.format(
                    Locale.ROOT,
                    "%-14s %6d %4.0f %%  %9d %20s %23s\n",
                    standing.law(),
                    standing.held(),
                    100.0 * standing.held() / spread.winters(),
                    standing.bothHeld(),
                    median(standing.dearerKWh()),
                    median(standing.damperH())));
        }
        out.append("""
                The last two are medians over the winters in which both held the floor. Faults strike all laws alike; machines
                taken out of use for service are so under ours only.

                """);
    }

    private static String median(OptionalDouble median) {
        return median.isPresent() ? String.format(Locale.ROOT, "%.1f", median.getAsDouble()) : "–";
    }

    private static String heading(Measured measured) {
        String unit = measured.unit().isEmpty() ? "" : ", " + measured.unit();
        return measured.label() + unit + "\n" + " ".repeat(LAW_WIDTH)
                + "   least      5 %     25 %   median     75 %     95 %     most     mean\n";
    }

    private static String row(Spread.Line line) {
        StringBuilder row = new StringBuilder(String.format(Locale.ROOT, "%-" + LAW_WIDTH + "s", line.law()));
        for (double value : values(line.spread())) {
            row.append(String.format(
                    Locale.ROOT, " %8s", Fixed.of(value, line.measured().decimals())));
        }
        return row.append('\n').toString();
    }

    static List<Double> values(Quantiles spread) {
        return List.of(
                spread.least(),
                spread.q05(),
                spread.q25(),
                spread.median(),
                spread.q75(),
                spread.q95(),
                spread.most(),
                spread.mean());
    }

    private static void failed(Spread spread, StringBuilder out) {
        if (spread.isGood()) {
            out.append("Every property held in every winter.\n");
            return;
        }
        List<WinterLine> shown = new ArrayList<>(spread.failed());
        for (WinterLine winter : shown.subList(0, Math.min(MOST_FAILED, shown.size()))) {
            for (Broken broken : winter.broken()) {
                out.append(inWords(winter, broken)).append('\n');
            }
        }
        out.append(String.format(
                Locale.ROOT,
                "%d of %d winters broke a property.\n",
                spread.failed().size(),
                spread.winters()));
    }

    /** One line about one broken property. */
    public static String inWords(WinterLine winter, Broken broken) {
        return String.format(
                Locale.ROOT,
                "BROKEN %s, seed %d (%s), %d s in all: %s",
                broken.code(),
                winter.seed(),
                winter.troubles().isEmpty() ? "nothing wrong" : String.join(" + ", winter.troubles()),
                broken.lastedS(),
                broken.text());
    }
}
