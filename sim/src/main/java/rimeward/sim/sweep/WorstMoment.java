package rimeward.sim.sweep;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rimeward.sim.fault.Fault;
import rimeward.sim.fault.FaultPlan;
import rimeward.sim.run.LawChoice;
import rimeward.sim.run.Replay;
import rimeward.sim.run.RunResult;
import rimeward.sim.run.Summary;
import rimeward.sim.run.SwitchEvent;
import rimeward.sim.scenario.Scenario;
import rimeward.sim.scenario.StandDownAt;
import rimeward.sim.weather.WeatherCursor;

/**
 * When troubles hurt most, by trial: the coldest night is replayed by itself, once in peace, and then with the first trouble at each of
 * several moments of it (dusk, midnight, the end of night; just after machines were last switched before the coldest; at the coldest). A
 * second trouble is tried around the first at its worst. Worst is a broken property, then the coldest bench.
 */
final class WorstMoment {
    private static final long DAY_S = 86_400;
    private static final long BEGINS_AFTER_NOON_S = 3 * 3600;
    private static final long LASTS_S = 21 * 3600; // to the next noon
    private static final List<Long> BY_THE_CLOCK_S = List.of(2 * 3600L, 9 * 3600L, 14 * 3600L); // 17, 24 and 5 o'clock
    private static final List<Long> AROUND_S = List.of(-1800L, -60L, 0L, 60L, 1800L);

    private final LawChoice law;
    private final Scenario scenario;
    private final long fromS;
    private final Scenario night;

    /** @param scenario starts at a noon */
    WorstMoment(Scenario scenario, LawChoice law) {
        this.scenario = scenario;
        this.law = law;
        fromS = Math.min(coldestS(scenario) / DAY_S * DAY_S + BEGINS_AFTER_NOON_S, scenario.lengthS() - LASTS_S);
        night = scenario.during(fromS, fromS + LASTS_S);
    }

    /** A trouble and its moment, s since the start. */
    record At(Trouble trouble, long atS) {}

    /** Of at most two troubles. */
    List<At> of(List<Trouble> troubles) {
        List<At> placed = new ArrayList<>();
        for (Trouble trouble : troubles) {
            Set<Long> moments = placed.isEmpty() ? quietMoments() : around(placed.get(0));
            placed.add(new At(trouble, worst(placed, trouble, moments)));
        }
        return placed.stream().map(at -> new At(at.trouble, at.atS + fromS)).toList();
    }

    /** The scenario with troubles at these moments, besides those it has. */
    static Scenario with(Scenario scenario, List<At> placed) {
        List<Fault> faults = new ArrayList<>(scenario.faults().faults());
        List<StandDownAt> orders = new ArrayList<>(scenario.orders());
        placed.forEach(at -> faults.addAll(at.trouble.faultsAt(at.atS)));
        placed.forEach(at -> orders.addAll(at.trouble.ordersAt(at.atS)));
        orders.sort(java.util.Comparator.comparingLong(StandDownAt::atS));
        return scenario.with(new FaultPlan(faults), orders);
    }

    private long worst(List<At> placed, Trouble trouble, Set<Long> moments) {
        long worstS = 0;
        Optional<Summary> worst = Optional.empty();
        for (long moment : moments) {
            List<At> tried = new ArrayList<>(placed);
            tried.add(new At(trouble, moment));
            Summary summary = Replay.run(with(night, tried), law).summary();
            if (worst.isEmpty() || isWorse(summary, worst.get())) {
                worst = Optional.of(summary);
                worstS = moment;
            }
        }
        return worstS;
    }

    private static boolean isWorse(Summary one, Summary than) {
        if (one.breaches().isEmpty() != than.breaches().isEmpty()) {
            return than.breaches().isEmpty();
        }
        return one.lowestBenchC() < than.lowestBenchC();
    }

    private Set<Long> quietMoments() {
        RunResult peace = Replay.run(night, law);
        Set<Long> moments = new LinkedHashSet<>(BY_THE_CLOCK_S);
        long coldestS = coldestS(night);
        moments.add(coldestS);
        for (int machine : heatSources()) {
            lastBefore(peace, machine, true, coldestS).ifPresent(moments::add);
            lastBefore(peace, machine, false, coldestS).ifPresent(moments::add);
        }
        return moments;
    }

    /** The first stage and the dryer, between which the warm duty passes; the other stages follow the first. */
    private List<Integer> heatSources() {
        int stages = scenario.site().heater().stages().size();
        return scenario.site().dryerRelay().isEmpty() ? List.of(0) : List.of(0, stages);
    }

    /** One tick after a machine was last switched. */
    private Optional<Long> lastBefore(RunResult run, int machine, boolean on, long beforeS) {
        return run.switches().stream()
                .filter(event -> event.machine() == machine && event.on() == on)
                .map(SwitchEvent::epochS)
                .map(epochS -> epochS - night.startEpochS() + night.tickS())
                .filter(atS -> atS < beforeS)
                .reduce((one, later) -> later);
    }

    /** A little before, with, and after the first; and as the first is over. */
    private static Set<Long> around(At first) {
        Set<Long> moments = new LinkedHashSet<>();
        AROUND_S.forEach(byS -> moments.add(within(first.atS + byS)));
        first.trouble.faults().stream()
                .map(fault -> within(first.atS + (long) fault.lastsS()))
                .forEach(moments::add);
        return moments;
    }

    private static long within(long atS) {
        return Math.max(0, Math.min(LASTS_S - 600, atS));
    }

    private static long coldestS(Scenario scenario) {
        WeatherCursor at = scenario.weather().cursor();
        long coldestS = 0;
        double coldestC = Double.POSITIVE_INFINITY;
        for (long s = 0; s < scenario.lengthS(); s += 600) {
            at.moveTo(scenario.startEpochS() + s);
            if (at.outsideAirC() < coldestC) {
                coldestC = at.outsideAirC();
                coldestS = s;
            }
        }
        return coldestS;
    }
}
