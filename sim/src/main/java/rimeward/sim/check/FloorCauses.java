package rimeward.sim.check;

import java.util.Set;
import rimeward.core.decision.Cause;
import rimeward.site.Machine;
import rimeward.site.Role;

/** The causes by which the floor outranks a heater's comfort: its rest, and how often it may start. */
final class FloorCauses {
    private static final Set<Cause> ALL =
            Set.of(Cause.NO_GAP, Cause.NO_GAP_SOON, Cause.FLOOR_NEAR, Cause.HEAT_LOST, Cause.BLIND_CYCLE);

    private FloorCauses() {}

    static boolean excuseStart(Machine machine, Cause cause) {
        return machine.role() == Role.HEATER_STAGE && ALL.contains(cause);
    }
}
