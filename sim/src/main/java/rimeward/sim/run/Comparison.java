package rimeward.sim.run;

import java.util.List;
import java.util.Optional;
import rimeward.site.Site;

/**
 * One scenario under several laws: everything that the table, the files and the page are made of.
 *
 * @param header what was replayed
 * @param site the tunnel as the settings describe it: floor, targets, machines in relay order, tariff
 * @param results one for each law, the scenario's own law first
 * @param gates what the laws had to reach, and whether they did; empty where nothing was asked
 * @param least what perfect foresight would have taken, where that was asked for
 */
public record Comparison(
        ScenarioHeader header, Site site, List<RunResult> results, List<GateVerdict> gates, Optional<Least> least) {
    public Comparison {
        results = List.copyOf(results);
        gates = List.copyOf(gates);
    }

    /** Without asking for the least. */
    public Comparison(ScenarioHeader header, Site site, List<RunResult> results, List<GateVerdict> gates) {
        this(header, site, results, gates, Optional.empty());
    }

    public Comparison with(Least found) {
        return new Comparison(header, site, results, gates, Optional.of(found));
    }

    public boolean gatesPassed() {
        return gates.stream().allMatch(GateVerdict::passed);
    }
}
