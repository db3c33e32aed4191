package rimeward.sim.report;

import java.io.IOException;
import java.time.Instant;
import java.util.Locale;
import rimeward.sim.run.Comparison;
import rimeward.sim.run.Quantity;
import rimeward.sim.run.RunResult;
import rimeward.sim.run.Trace;
import rimeward.site.Machine;
import rimeward.site.Site;

/**
 * {@code trace.csv}: every law's trace below one header, law after law, each in order of time. Times are ISO 8601 in UTC; each heading ends
 * with its unit. {@code judgedC} is empty where the controller knew no inside temperature.
 */
public final class TraceCsv {
    private static final Quantity[] QUANTITIES = Quantity.values();

    private final Comparison comparison;
    private final Appendable out;
    private final StringBuilder line = new StringBuilder();

    private TraceCsv(Comparison comparison, Appendable out) {
        this.comparison = comparison;
        this.out = out;
    }

    public static void write(Comparison comparison, Appendable out) throws IOException {
        TraceCsv csv = new TraceCsv(comparison, out);
        csv.header(comparison.site());
        for (RunResult result : comparison.results()) {
            for (int row = 0; row < result.trace().rows(); row++) {
                csv.row(result, row);
            }
        }
    }

    private void header(Site site) throws IOException {
        line.append("timeUtc,law");
        for (Quantity quantity : QUANTITIES) {
            line.append(',').append(quantity.column());
        }
        for (Machine machine : site.machines()) {
            line.append(',').append(machine.id()).append(".W");
        }
        for (Machine machine : site.machines()) {
            line.append(',').append(machine.id()).append(".closed");
        }
        line.append(",holder,trust,mains,needed,gap,doorOpen");
        endLine();
    }

    private void row(RunResult result, int row) throws IOException {
        Trace trace = result.trace();
        line.append(Instant.ofEpochSecond(trace.epochS(row)))
                .append(',')
                .append(result.law().name());
        for (Quantity quantity : QUANTITIES) {
            line.append(',');
            if (quantity != Quantity.JUDGED_C || trace.hasJudged(row)) {
                Fixed.append(line, trace.at(quantity, row), quantity.decimals());
            }
        }
        int machines = comparison.site().machines().size();
        for (int i = 0; i < machines; i++) {
            line.append(',');
            Fixed.append(line, trace.powerW(i, row), 1);
        }
        for (int i = 0; i < machines; i++) {
            flag(trace.closed(row).has(i));
        }
        word(trace.holder(row).name());
        word(trace.trust(row).name());
        flag(trace.isPowered(row));
        flag(trace.isNeeded(row));
        flag(trace.isGap(row));
        flag(trace.isDoorOpen(row));
        endLine();
    }

    private void word(String constant) {
        line.append(',').append(constant.toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    private void flag(boolean set) {
        line.append(set ? ",1" : ",0");
    }

    private void endLine() throws IOException {
        out.append(line).append('\n');
        line.setLength(0);
    }
}
