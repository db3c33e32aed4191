package rimeward.sim.run;

import rimeward.core.decision.Reason;

/**
 * A relay was switched.
 *
 * @param epochS when, s since 1970 UTC
 * @param machine its place in the site's machines
 * @param machineId its name
 * @param on closed (true) or opened
 * @param reason why, with the numbers that decided it
 * @param overruled whether the guard did this against, or without, the law's wish
 */
public record SwitchEvent(long epochS, int machine, String machineId, boolean on, Reason reason, boolean overruled) {

    /** Why, as one sentence for a person, without a full stop. */
    public String sentence() {
        return reason.sentence();
    }
}
