package rimeward.sim.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import rimeward.report.LogEntry;
import rimeward.report.Say;
import rimeward.sim.run.AlertEvent;
import rimeward.sim.run.FaultNote;
import rimeward.sim.run.RunResult;
import rimeward.sim.run.ScenarioHeader;
import rimeward.sim.run.SwitchEvent;
import rimeward.strip.Span;
import rimeward.strip.Spell;

/** Everything that happened in one run, in order of time. */
final class LogBook {
    private final Span span;
    private final List<LogEntry> entries = new ArrayList<>();

    private LogBook(Span span) {
        this.span = span;
    }

    static List<LogEntry> of(ScenarioHeader header, RunResult result) {
        LogBook book = new LogBook(Spans.of(header));
        book.faults(header);
        book.power(result);
        book.door(result);
        result.switches().forEach(book::relay);
        HandOver.in(result.trace()).forEach(book::handOver);
        book.alerts(result);
        book.entries.sort(Comparator.comparingLong(LogEntry::epochS).thenComparing(LogEntry::kind));
        return List.copyOf(book.entries);
    }

    private void faults(ScenarioHeader header) {
        int number = 0;
        for (FaultNote fault : header.faults()) {
            String code = "F" + ++number;
            add(fault.fromEpochS(), LogEntry.Kind.FAULT, code + " begins", sentence(fault.text()));
            if (fault.toEpochS() < span.endS() && fault.toEpochS() > fault.fromEpochS()) {
                add(fault.toEpochS(), LogEntry.Kind.FAULT, code + " ends", "");
            }
        }
    }

    private void power(RunResult result) {
        for (Spell spell :
                Spells.where(result.trace(), span.endS(), row -> !result.trace().isPowered(row))) {
            add(spell.fromS(), LogEntry.Kind.POWER, "mains off", "");
            if (spell.toS() < span.endS()) {
                add(
                        spell.toS(),
                        LogEntry.Kind.POWER,
                        "mains back",
                        "After " + Say.duration(spell.toS() - spell.fromS()) + ".");
            }
        }
    }

    private void door(RunResult result) {
        for (Spell spell : Spells.where(result.trace(), span.endS(), result.trace()::isDoorOpen)) {
            add(spell.fromS(), LogEntry.Kind.DOOR, "door open", "");
            if (spell.toS() < span.endS()) {
                add(
                        spell.toS(),
                        LogEntry.Kind.DOOR,
                        "door shut",
                        "After " + Say.duration(spell.toS() - spell.fromS()) + ".");
            }
        }
    }

    private void relay(SwitchEvent event) {
        String why = sentence(event.sentence()) + (event.overruled() ? " The guard's word." : "");
        add(event.epochS(), LogEntry.Kind.SWITCH, event.machineId() + (event.on() ? " on" : " off"), why);
    }

    private void handOver(HandOver handOver) {
        String what = name(handOver.from()) + " → " + name(handOver.to());
        add(handOver.epochS(), LogEntry.Kind.DUTY, what, "");
    }

    private void alerts(RunResult result) {
        int number = 0;
        for (AlertEvent alert : result.alerts()) {
            String code = alert.raised() ? "A" + ++number + " " : "";
            String what = code + alert.kind().title() + (alert.raised() ? "" : ": over");
            add(alert.epochS(), LogEntry.Kind.ALERT, what, alert.raised() ? alert.text() : "");
        }
    }

    private void add(long epochS, LogEntry.Kind kind, String what, String why) {
        entries.add(new LogEntry(epochS, kind, what, why));
    }

    private static String name(Enum<?> holder) {
        return holder.name().toLowerCase(Locale.ROOT);
    }

    private static String sentence(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1) + ".";
    }
}
