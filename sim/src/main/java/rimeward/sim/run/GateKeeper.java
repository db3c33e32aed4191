package rimeward.sim.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import rimeward.sim.scenario.Gate;
import rimeward.sim.scenario.Gates;

/** Holds the scenario's own law against its gates. */
final class GateKeeper {
    private static final String ALWAYS_ON = "always-on";
    private static final double S_PER_MIN = 60;
    private static final double S_PER_H = 3600;
    private static final double S_PER_DAY = 86_400;

    private final ScenarioHeader header;
    private final List<RunResult> results;

    GateKeeper(ScenarioHeader header, List<RunResult> results) {
        this.header = header;
        this.results = results;
    }

    /** One verdict for each gate that can be measured; a share of a rival that did not run cannot. */
    List<GateVerdict> verdicts(Gates gates) {
        RunResult own = results.get(0);
        List<GateVerdict> verdicts = new ArrayList<>();
        for (Map.Entry<Gate, Double> entry : gates.limits().entrySet()) {
            Gate gate = entry.getKey();
            double limit = entry.getValue();
            measured(gate, own.summary())
                    .ifPresent(value -> verdicts.add(
                            new GateVerdict(own.law().name(), gate.key(), value, limit, gate.passes(value, limit))));
        }
        return verdicts;
    }

    private OptionalDouble measured(Gate gate, Summary summary) {
        return switch (gate) {
            case LEAST_BENCH_C -> OptionalDouble.of(summary.lowestBenchC());
            case MOST_BELOW_FLOOR_MIN -> OptionalDouble.of(summary.belowFloorS() / S_PER_MIN);
            case MOST_GAP_S -> OptionalDouble.of((double) summary.gapS());
            case MOST_BENCH_AT_DEW_MIN -> OptionalDouble.of(summary.benchAtDewS() / S_PER_MIN);
            case MOST_FILM_AT_DEW_MIN -> OptionalDouble.of(summary.filmAtDewS() / S_PER_MIN);
            case MOST_ABOVE_RH_TARGET_H -> OptionalDouble.of(summary.aboveRhTargetS() / S_PER_H);
            case MOST_TOTAL_KWH -> OptionalDouble.of(summary.totalKWh());
            case MOST_COST -> OptionalDouble.of(summary.cost());
            case MOST_SHARE_OF_ALWAYS_ON -> shareOfAlwaysOn(summary);
            case MOST_STARTS_A_DAY -> OptionalDouble.of(startsADay(summary));
            case MOST_ALERTS -> OptionalDouble.of(summary.alerts());
            case MOST_BROKEN_PROPERTIES -> OptionalDouble.of(summary.breaches().size());
        };
    }

    private OptionalDouble shareOfAlwaysOn(Summary summary) {
        Optional<Summary> rival = results.stream()
                .filter(result -> result.law().name().equals(ALWAYS_ON))
                .map(RunResult::summary)
                .filter(other -> other.totalKWh() > 0)
                .findFirst();
        return rival.isPresent()
                ? OptionalDouble.of(summary.totalKWh() / rival.get().totalKWh())
                : OptionalDouble.empty();
    }

    private double startsADay(Summary summary) {
        int most =
                summary.machines().stream().mapToInt(MachineUse::starts).max().orElse(0);
        return most / Math.max(1, header.lengthS() / S_PER_DAY);
    }
}
