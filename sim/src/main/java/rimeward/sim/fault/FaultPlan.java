package rimeward.sim.fault;

import java.util.Comparator;
import java.util.List;

/**
 * All that goes wrong in one run.
 *
 * @param faults in order of their beginnings, whatever order they were given in
 */
public record FaultPlan(List<Fault> faults) {
    public FaultPlan {
        faults = faults.stream().sorted(Comparator.comparingDouble(Fault::atS)).toList();
    }

    public static FaultPlan none() {
        return new FaultPlan(List.of());
    }

    public static FaultPlan of(Fault... faults) {
        return new FaultPlan(List.of(faults));
    }
}
