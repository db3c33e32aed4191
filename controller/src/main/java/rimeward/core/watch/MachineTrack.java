package rimeward.core.watch;

import rimeward.site.Machine;
import rimeward.site.Role;

/**
 * What the watch remembers of one machine.
 *
 * @param sinceChangeS how long its relay has been as it is, s
 * @param failedLeftS how long it still counts as failed, s
 */
record MachineTrack(double sinceChangeS, double failedLeftS) {
    /** A stage that gave nothing counts as failed for this long, s, unless it is seen to give. Own choice. */
    private static final double FAILED_S = 7200;

    static final MachineTrack START = new MachineTrack(0, 0);

    double sinceChangeS(boolean changed, double dtS) {
        return changed ? 0 : sinceChangeS + dtS;
    }

    MachineTrack after(Machine machine, Delivery delivery, double sinceS, double dtS) {
        double leftS = switch (delivery) {
            case NOT_GIVING -> machine.role() == Role.HEATER_STAGE ? FAILED_S : 0;
            case GIVING, STUCK_ON -> 0;
            case OFF, STARTING, UNSEEN -> StrictMath.max(0, failedLeftS - dtS);
        };
        return new MachineTrack(sinceS, leftS);
    }

    boolean failed() {
        return failedLeftS > 0;
    }
}
