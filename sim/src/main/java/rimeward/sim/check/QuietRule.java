package rimeward.sim.check;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rimeward.core.decision.Cause;
import rimeward.core.decision.Reason;
import rimeward.site.Machine;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/** P7. In no hour does a relay close more often than its machine bears, unless the floor demands it of a heater. */
final class QuietRule {
    private static final long HOUR_S = 3600;
    private static final long NEVER = Long.MIN_VALUE / 2;

    private final Log log = new Log(Property.P7_QUIET);
    private final Site site;
    private final long[][] startsEpochS; // for each machine its last starts, as many as an hour may have, in a ring
    private final int[] next;
    private RelaySet was = RelaySet.none();

    QuietRule(Site site) {
        this.site = site;
        startsEpochS = new long[site.machines().size()][];
        next = new int[startsEpochS.length];
        for (int i = 0; i < startsEpochS.length; i++) {
            startsEpochS[i] = new long[site.machines().get(i).maxStartsPerH()];
            Arrays.fill(startsEpochS[i], NEVER);
        }
    }

    /** To be called when relays changed. */
    void switched(Facts now, List<Reason> reasons) {
        RelaySet started = now.closed.minus(was);
        was = now.closed;
        for (int i = 0; i < startsEpochS.length; i++) {
            if (started.has(i)) {
                start(now, i, reasons.get(i).cause());
            }
        }
    }

    /** A start that the floor demands is not counted. */
    private void start(Facts now, int machine, Cause cause) {
        Machine what = site.machines().get(machine);
        if (FloorCauses.excuseStart(what, cause)) {
            return;
        }
        long[] ring = startsEpochS[machine];
        long oldestS = ring[next[machine]];
        ring[next[machine]] = now.epochS;
        next[machine] = (next[machine] + 1) % ring.length;
        if (now.epochS - oldestS < HOUR_S) {
            log.found(
                    now,
                    () -> String.format(
                            Locale.ROOT,
                            "%s started for the %d. time within %d s; it bears %d starts an hour",
                            what.id(),
                            ring.length + 1,
                            now.epochS - oldestS,
                            ring.length));
        }
    }

    /** Relays fell by themselves, and what was before is no longer the controller's. */
    void fell(Facts now) {
        was = now.closed;
        for (long[] ring : startsEpochS) {
            Arrays.fill(ring, NEVER);
        }
    }

    Optional<Breach> breach() {
        return log.breach();
    }
}
