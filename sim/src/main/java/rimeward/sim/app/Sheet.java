package rimeward.sim.app;

import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import rimeward.sim.check.Breach;
import rimeward.sim.report.LeastWords;
import rimeward.sim.report.TextTable;
import rimeward.sim.report.Verdict;
import rimeward.sim.run.Comparison;
import rimeward.sim.run.GateVerdict;
import rimeward.sim.run.RunResult;
import rimeward.sim.run.ScenarioHeader;
import rimeward.sim.run.Summary;
import rimeward.sim.scenario.Scenario;

/** One comparison for a terminal: what was replayed, the table, the verdict, gates and properties. */
final class Sheet {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

    /** Ledgers that are farther from closing mean a fault of the simulator (design/physics). */
    private static final double MOST_CLOSURE = 1e-9;

    private final Comparison comparison;
    private final boolean inColour;
    private final StringBuilder out = new StringBuilder();

    Sheet(Comparison comparison, boolean inColour) {
        this.comparison = comparison;
        this.inColour = inColour;
    }

    String text() {
        head(comparison.header());
        out.append(TextTable.of(comparison, inColour)).append('\n');
        RunResult own = comparison.results().get(0);
        Verdict verdict = Verdict.of(comparison, own);
        out.append(own.law().name()).append(": ").append(verdict.word()).append(". ");
        out.append(verdict.text()).append('\n');
        LeastWords.of(comparison)
                .forEach(words -> out.append(words.replace('\u00A0', ' ')).append('\n'));
        for (RunResult result : comparison.results()) {
            checks(result);
        }
        gates();
        return out.toString();
    }

    /** Whether gates were passed, properties held under the guard, and ledgers closed. */
    boolean isGood() {
        return comparison.gatesPassed()
                && comparison.results().stream()
                        .allMatch(result -> closes(result.summary())
                                && (!result.law().guarded()
                                        || result.summary().breaches().isEmpty()));
    }

    static String speed(Scenario scenario, int laws, double tookS) {
        double ticks = (double) laws * scenario.lengthS() / scenario.tickS();
        return String.format(
                Locale.ROOT, "%,.0f ticks in %.1f s, %.2f million a second\n", ticks, tookS, ticks / tookS / 1e6);
    }

    private void head(ScenarioHeader header) {
        out.append(header.title()).append(" (").append(header.id()).append(")\n");
        out.append(clock(header.startEpochS(), header)).append(" to ").append(clock(header.endEpochS(), header));
        out.append(" UTC")
                .append(header.offset().getId())
                .append("; ")
                .append(header.weather())
                .append('\n');
        header.faults()
                .forEach(fault -> out.append("  ")
                        .append(clock(fault.fromEpochS(), header))
                        .append(": ")
                        .append(fault.text())
                        .append('\n'));
        out.append('\n');
    }

    /** Rivals have no guard and promise nothing, so only what was promised is told. */
    private void checks(RunResult result) {
        Summary summary = result.summary();
        if (!closes(summary)) {
            out.append(String.format(
                    Locale.ROOT,
                    "%s: LEDGERS DO NOT CLOSE: heat %.1e, water %.1e of their turnover\n",
                    result.law().name(),
                    summary.heatClosure(),
                    summary.waterClosure()));
        }
        List<Breach> breaches = result.law().guarded() ? summary.breaches() : List.of();
        for (Breach breach : breaches) {
            out.append(String.format(
                    Locale.ROOT,
                    "%s: BROKEN %s %s, first %s, %d s in all: %s\n",
                    result.law().name(),
                    breach.property().code(),
                    breach.property().title(),
                    clock(breach.firstEpochS(), comparison.header()),
                    breach.lastedS(),
                    breach.text()));
        }
    }

    private void gates() {
        List<GateVerdict> missed =
                comparison.gates().stream().filter(gate -> !gate.passed()).toList();
        for (GateVerdict gate : missed) {
            out.append(String.format(
                    Locale.ROOT,
                    "%s: GATE MISSED %s: %.3f, limit %.3f\n",
                    gate.law(),
                    gate.gate(),
                    gate.measured(),
                    gate.limit()));
        }
        if (!comparison.gates().isEmpty() && missed.isEmpty()) {
            out.append("All ").append(comparison.gates().size()).append(" gates passed.\n");
        }
    }

    private static boolean closes(Summary summary) {
        return summary.heatClosure() <= MOST_CLOSURE && summary.waterClosure() <= MOST_CLOSURE;
    }

    private static String clock(long epochS, ScenarioHeader header) {
        return CLOCK.format(Instant.ofEpochSecond(epochS).atOffset(header.offset()));
    }
}
