package rimeward.sim.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rimeward.core.guard.Holder;
import rimeward.report.Say;
import rimeward.sim.run.Trace;
import rimeward.site.Machine;
import rimeward.site.RelaySet;
import rimeward.site.Role;
import rimeward.site.Site;
import rimeward.strip.DutyRow;
import rimeward.strip.LaneRow;
import rimeward.strip.Row;
import rimeward.strip.Span;
import rimeward.strip.Spell;

/** The machines of one run as lanes, and who held the warm duty. */
final class MachineRows {
    private MachineRows() {}

    /** A lane for each relay. */
    static List<Row> each(Site site, Trace trace, Span span) {
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < site.machines().size(); i++) {
            Machine machine = site.machines().get(i);
            rows.add(lane(machine.id(), ink(machine.role()), RelaySet.none().with(i), site, trace, span));
        }
        return rows;
    }

    /** A lane for the heater, all stages together, and one for the dryer. */
    static List<Row> heatSources(Site site, Trace trace, Span span) {
        List<Row> rows = new ArrayList<>();
        rows.add(lane("heater", "heater", site.heaterStages(), site, trace, span));
        if (!site.dryerRelay().isEmpty()) {
            rows.add(lane("dryer", "dryer", site.dryerRelay(), site, trace, span));
        }
        return rows;
    }

    private static Row lane(String name, String ink, RelaySet set, Site site, Trace trace, Span span) {
        PowerSeries power = new PowerSeries(trace, set, false);
        return new LaneRow(
                name, ink, site.ratedW(set), power, new PowerSeries(trace, set, true), says(name, power, span));
    }

    private static String says(String name, PowerSeries power, Span span) {
        double kWh = power.energyKWh(span.endS());
        long ranS = Spells.totalS(
                Spells.where(power.trace(), span.endS(), row -> power.value(row) > PowerSeries.WHISPER_W));
        return "Lane of " + name + ": drew power for " + Say.duration(ranS) + ", " + Say.number(kWh, 1) + " kWh.";
    }

    private static String ink(Role role) {
        return switch (role) {
            case HEATER_STAGE -> "heater";
            case DRYER -> "dryer";
            case VENT_FAN -> "fan";
        };
    }

    static DutyRow duty(Trace trace, Span span) {
        List<DutyRow.Line> lines = new ArrayList<>();
        lines.add(line("needed", "need", trace, span, row -> trace.isNeeded(row)));
        for (Holder holder : List.of(Holder.HEATER, Holder.DRYER, Holder.BARRED)) {
            DutyRow.Line line = line(
                    name(holder),
                    name(holder),
                    trace,
                    span,
                    row -> trace.holder(row) == holder && trace.isPowered(row));
            if (holder != Holder.BARRED || !line.spells().isEmpty()) {
                lines.add(line);
            }
        }
        List<Spell> gaps = Spells.where(trace, span.endS(), trace::isGap);
        List<HandOver> handOvers = HandOver.in(trace);
        String says = "Who held the warm duty. " + says(lines) + " Passed from one machine to the other "
                + Say.count(handOvers.size(), "time", "times") + "; gaps: " + Say.duration(Spells.totalS(gaps)) + ".";
        return new DutyRow(
                "warm duty", lines, handOvers.stream().map(HandOver::epochS).toList(), gaps, says);
    }

    private static DutyRow.Line line(
            String name, String ink, Trace trace, Span span, java.util.function.IntPredicate holds) {
        return new DutyRow.Line(name, ink, Spells.where(trace, span.endS(), holds));
    }

    private static String says(List<DutyRow.Line> lines) {
        List<String> parts = lines.stream()
                .map(line -> line.name() + " " + Say.duration(Spells.totalS(line.spells())))
                .toList();
        return String.join(", ", parts) + ".";
    }

    private static String name(Holder holder) {
        return holder.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
