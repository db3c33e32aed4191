package rimeward.core.watch;

import rimeward.site.Machine;
import rimeward.site.Role;

/**
 * What the watch remembers of one machine.
 *
 * @param sinceChangeS how long its relay has been as it is, s
 * @param failed whether it gave nothing when last it should have
 * @param sinceFailedS how long ago that was seen, s
 */
record MachineTrack(double sinceChangeS, boolean failed, double sinceFailedS) {
    /** Where no meter can show that a stage gives again, its failure is forgotten after this, s. Own choice. */
    private static final double FORGOTTEN_S = 7200;

    /** Somebody may have mended it meanwhile: after this, s, it is worth the room that another would need. Own choice. */
    private static final double TRY_AGAIN_S = 1800;

    /** Nobody asks whether it was longer ago, s. */
    private static final double LONG_S = 3600;

    static final MachineTrack START = new MachineTrack(0, false, 0);

    double sinceChangeS(boolean changed, double dtS) {
        return changed ? 0 : StrictMath.min(LONG_S, sinceChangeS + dtS);
    }

    /**
     * The next state.
     *
     * @param metered whether a meter tells what it gives
     * @param airTells whether the air can: not while blind, when forgetting would only mean not knowing
     */
    MachineTrack after(
            Machine machine, Delivery delivery, boolean metered, boolean airTells, double sinceS, double dtS) {
        return switch (delivery) {
            case NOT_GIVING -> new MachineTrack(sinceS, machine.role() == Role.HEATER_STAGE, 0);
            case GIVING, STUCK_ON -> sound(sinceS);
            case OFF, STARTING, UNSEEN -> {
                if (!failed) {
                    yield sound(sinceS);
                }
                double agoS = sinceFailedS + (metered || airTells ? dtS : 0);
                yield metered || agoS < FORGOTTEN_S ? new MachineTrack(sinceS, true, agoS) : sound(sinceS);
            }
        };
    }

    /** Itself where nothing is new, which is most ticks of a machine at rest. */
    private MachineTrack sound(double sinceS) {
        return !failed && sinceS == sinceChangeS ? this : new MachineTrack(sinceS, false, 0);
    }

    boolean failedLately() {
        return failed && sinceFailedS < TRY_AGAIN_S;
    }
}
