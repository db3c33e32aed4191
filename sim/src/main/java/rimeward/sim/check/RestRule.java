package rimeward.sim.check;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import rimeward.core.decision.Cause;
import rimeward.core.decision.Reason;
import rimeward.site.Machine;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/**
 * P4. Every machine gets its shortest run and rest. The floor may cut a heater's rest short; limits that keep people and machines from
 * harm, and standing down for service, may cut any run short; a dryer's or fan's rest is never cut.
 */
final class RestRule {
    private static final long LONG_AGO_S = -1_000_000_000_000L;

    private static final Set<Cause> CUT_A_RUN = Set.of(
            Cause.TOO_HOT,
            Cause.TOO_HOT_UNSEEN,
            Cause.OVERLOAD,
            Cause.STAGGER,
            Cause.STANDS_DOWN,
            Cause.TANK_FULL,
            Cause.TOO_COLD_FOR_DRYER,
            Cause.DRYER_RESTS,
            Cause.DRYER_BLIND,
            Cause.BLIND_CYCLE);

    private final Log log = new Log(Property.P4_REST);
    private final Site site;
    private final long[] changedEpochS;
    private RelaySet was = RelaySet.none();

    /** Closed since they fell so, without a controller. */
    private RelaySet fallen = RelaySet.none();

    RestRule(Site site) {
        this.site = site;
        changedEpochS = new long[site.machines().size()];
        Arrays.fill(changedEpochS, LONG_AGO_S);
    }

    /** To be called when relays changed. */
    void switched(Facts now, List<Reason> reasons) {
        for (int i = 0; i < changedEpochS.length; i++) {
            if (was.has(i) != now.closed.has(i)) {
                judge(now, i, reasons.get(i).cause());
                boolean endsAFall = fallen.has(i) && was.has(i);
                changedEpochS[i] = endsAFall ? LONG_AGO_S : now.epochS;
            }
        }
        was = now.closed;
        fallen = fallen.and(was);
    }

    /**
     * Relays fell by themselves: nobody decided it, and the machines' history is no longer the controller's. That goes for one that was
     * closed and stays so as well as for one that falls closed: else a run of 45 s would be a fault where one of 35 s is none.
     */
    void fell(Facts now) {
        for (int i = 0; i < changedEpochS.length; i++) {
            if (was.has(i) != now.closed.has(i) || now.closed.has(i)) {
                changedEpochS[i] = LONG_AGO_S;
            }
        }
        was = now.closed;
        fallen = was;
    }

    private void judge(Facts now, int machine, Cause cause) {
        Machine what = site.machines().get(machine);
        boolean starts = now.closed.has(machine);
        long sinceS = now.epochS - changedEpochS[machine];
        double leastS = starts ? what.minRestS() : what.minOnS();
        boolean allowed = starts ? FloorCauses.excuseStart(what, cause) : CUT_A_RUN.contains(cause);
        if (sinceS < leastS && !allowed) {
            log.found(
                    now,
                    () -> String.format(
                            Locale.ROOT,
                            "%s was %s after %d s, sooner than %.0f s, for %s",
                            what.id(),
                            starts ? "started" : "stopped",
                            sinceS,
                            leastS,
                            cause));
        }
    }

    Optional<Breach> breach() {
        return log.breach();
    }
}
