package rimeward.core.guard;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import rimeward.site.RelaySet;

/**
 * Machines that stand down for service, and how long yet.
 *
 * @param machines those that do
 * @param leftS time left of each machine in the site's order, s, 0 for those in use; empty where none stands down
 */
public record StandDowns(RelaySet machines, List<Double> leftS) {
    public static final StandDowns NONE = new StandDowns(RelaySet.none(), List.of());

    /** How long this machine stands down yet, s; 0 where it is in use. */
    public double leftS(int machine) {
        return machines.has(machine) ? leftS.get(machine) : 0;
    }

    /**
     * With this machine standing down for so long from now, or back in use.
     *
     * @param forS s; 0 brings it back
     * @param count of all machines
     */
    public StandDowns with(int machine, double forS, int count) {
        List<Double> left =
                machines.isEmpty() ? new ArrayList<>(Collections.nCopies(count, 0.0)) : new ArrayList<>(leftS);
        left.set(machine, forS);
        return of(left);
    }

    /** So much later: whose time is over is back in use. */
    StandDowns after(double dtS) {
        return machines.isEmpty()
                ? this
                : of(leftS.stream().map(s -> StrictMath.max(0, s - dtS)).toList());
    }

    private static StandDowns of(List<Double> leftS) {
        RelaySet machines = RelaySet.none();
        for (int i = 0; i < leftS.size(); i++) {
            machines = leftS.get(i) > 0 ? machines.with(i) : machines;
        }
        return machines.isEmpty() ? NONE : new StandDowns(machines, List.copyOf(leftS));
    }
}
