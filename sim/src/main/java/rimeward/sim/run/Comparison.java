package rimeward.sim.run;

import java.util.List;
import rimeward.site.Site;

/**
 * One scenario under several laws: everything that the table, the files and the page are made of.
 *
 * @param header what was replayed
 * @param site the tunnel as the settings describe it: floor, targets, machines in relay order, tariff
 * @param results one for each law, the scenario's own law first
 * @param gates what the laws had to reach, and whether they did; empty where nothing was asked
 */
public record Comparison(ScenarioHeader header, Site site, List<RunResult> results, List<GateVerdict> gates) {
    public Comparison {
        results = List.copyOf(results);
        gates = List.copyOf(gates);
    }

    public boolean gatesPassed() {
        return gates.stream().allMatch(GateVerdict::passed);
    }
}
