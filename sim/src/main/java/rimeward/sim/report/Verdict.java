package rimeward.sim.report;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rimeward.core.guard.Holder;
import rimeward.report.Say;
import rimeward.sim.check.Breach;
import rimeward.sim.check.Property;
import rimeward.sim.run.AlertEvent;
import rimeward.sim.run.Comparison;
import rimeward.sim.run.FaultNote;
import rimeward.sim.run.RunResult;
import rimeward.sim.run.Shortfall;
import rimeward.sim.run.Summary;
import rimeward.sim.run.SwitchEvent;
import rimeward.strip.Stamp;

/**
 * What a person should know first.
 *
 * @param word one or two words: how it went
 * @param floor whether the floor held, where and when it was lowest, and by how much the heat fell short
 * @param rest what the scenario broke on purpose, the gap, what the grower was told, broken rules, what it cost; a sentence each
 */
public record Verdict(String word, String floor, List<String> rest) {
    private static final int MOST_FAULTS = 3;

    /** Of one law in one comparison. */
    public static Verdict of(Comparison comparison, RunResult result) {
        Summary summary = result.summary();
        boolean held = summary.belowFloorS() == 0;
        String word = !held ? "Broke" : summary.gapS() > 0 ? "Held, with a gap" : "Held";
        ZoneOffset offset = comparison.header().offset();
        String floor = held ? held(comparison, summary, offset) : broke(comparison, summary, offset);
        List<String> rest = new ArrayList<>();
        planted(comparison, rest);
        rest.add(gap(comparison, result, offset));
        alerts(result, offset, rest);
        rules(summary, rest);
        rest.add(cost(summary));
        return new Verdict(word, floor, List.copyOf(rest));
    }

    /** All of it as running text, with plain spaces. */
    public String text() {
        return (floor + " " + String.join(" ", rest)).replace('\u00A0', ' ');
    }

    private static String held(Comparison comparison, Summary summary, ZoneOffset offset) {
        return "The floor of " + Say.degrees(comparison.site().floorC()) + " held throughout: lowest "
                + lowest(summary, offset) + ".";
    }

    private static String broke(Comparison comparison, Summary summary, ZoneOffset offset) {
        String text = "The floor of " + Say.degrees(comparison.site().floorC()) + " broke: "
                + Say.duration(summary.belowFloorS()) + " below it, lowest " + lowest(summary, offset);
        if (summary.shortfall() instanceof Shortfall.Missing missing) {
            text += ", " + Say.with(missing.deepestK(), 1, "K") + " short; about " + Say.number(missing.missingW(), 0)
                    + " W of heat were missing";
        }
        return text + ".";
    }

    /** What the scenario broke on purpose: without it the numbers would mean something else. */
    private static void planted(Comparison comparison, List<String> rest) {
        ZoneOffset offset = comparison.header().offset();
        List<String> faults = new ArrayList<>();
        for (FaultNote fault : comparison.header().faults()) {
            if (faults.size() < MOST_FAULTS) {
                faults.add(fault.text() + " from " + moment(fault.fromEpochS(), offset));
            }
        }
        int more = comparison.header().faults().size() - faults.size();
        if (!faults.isEmpty()) {
            rest.add("Planted: " + String.join("; ", faults) + (more > 0 ? "; and " + more + " more." : "."));
        }
    }

    private static String lowest(Summary summary, ZoneOffset offset) {
        String bench = summary.lowestBench();
        boolean saysSo = bench.toLowerCase(Locale.ROOT).contains("bench");
        return Say.degrees(summary.lowestBenchC()) + (saysSo ? " on the " : " on the bench ") + bench + ", "
                + moment(summary.lowestEpochS(), offset);
    }

    private static String gap(Comparison comparison, RunResult result, ZoneOffset offset) {
        long gapS = result.summary().gapS();
        if (gapS > 0) {
            return "Gap: " + Say.duration(gapS) + " near the floor with heat in hand and nobody giving it.";
        }
        List<HandOver> toHeater = HandOver.in(result.trace()).stream()
                .filter(each -> each.from() == Holder.DRYER)
                .toList();
        if (toHeater.isEmpty()) {
            return "No gap.";
        }
        HandOver first = toHeater.get(0);
        String when = moment(first.epochS(), offset);
        if (toHeater.size() > 1) {
            return "No gap: each of the " + toHeater.size() + " times the dryer gave up the warm duty, first " + when
                    + ", the heater took it over.";
        }
        boolean sameTick = isSwitched(comparison, result, first.epochS());
        return "No gap: when the dryer gave up the warm duty, " + when + ", the heater took it over"
                + (sameTick ? " in the same tick." : " at once.");
    }

    /** Whether the dryer's relay opened and a heater's closed in one tick. */
    private static boolean isSwitched(Comparison comparison, RunResult result, long epochS) {
        List<SwitchEvent> now = result.switches().stream()
                .filter(each -> each.epochS() == epochS)
                .toList();
        return now.stream()
                        .anyMatch(s -> !s.on() && comparison.site().dryerRelay().has(s.machine()))
                && now.stream()
                        .anyMatch(
                                s -> s.on() && comparison.site().heaterStages().has(s.machine()));
    }

    private static void alerts(RunResult result, ZoneOffset offset, List<String> rest) {
        List<AlertEvent> raised =
                result.alerts().stream().filter(AlertEvent::raised).toList();
        if (!raised.isEmpty()) {
            AlertEvent first = raised.get(0);
            String told = switch (raised.size()) {
                case 1 -> "The grower was told once, ";
                case 2 -> "The grower was told twice, first ";
                default -> "The grower was told " + raised.size() + " times, first ";
            };
            rest.add(told + moment(first.epochS(), offset) + ": " + first.kind().title() + ".");
        }
    }

    /** The floor and the gap have sentences of their own. */
    private static void rules(Summary summary, List<String> rest) {
        List<String> names = summary.breaches().stream()
                .map(Breach::property)
                .filter(p -> p != Property.P1_FLOOR && p != Property.P2_NO_GAP)
                .map(Property::title)
                .toList();
        if (!names.isEmpty()) {
            rest.add((names.size() == 1 ? "A rule was broken: " : "Rules were broken: ") + String.join(", ", names)
                    + ".");
        }
    }

    private static String cost(Summary summary) {
        String text = Say.with(summary.totalKWh(), 1, "kWh") + ", " + Say.with(summary.cost(), 2, summary.currency());
        return summary.collectedL() > 0
                ? text + ", " + Say.with(summary.collectedL(), 1, "L") + " of water taken out."
                : text + ".";
    }

    private static String moment(long epochS, ZoneOffset offset) {
        return Stamp.day(epochS, offset) + " " + Stamp.clock(epochS, offset);
    }
}
