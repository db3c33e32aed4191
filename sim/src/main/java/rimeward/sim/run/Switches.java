package rimeward.sim.run;

import java.util.ArrayList;
import java.util.List;
import rimeward.core.decision.Reason;
import rimeward.core.guard.Guarded;
import rimeward.sim.world.Truth;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/** Every change of a relay, and what each machine did; for one thread. */
final class Switches {
    private static final double J_PER_KWH = 3.6e6;

    private final Site site;
    private final List<SwitchEvent> events = new ArrayList<>();
    private final int[] starts;
    private final long[] changedEpochS;
    private final long[] closedS;
    private final long[] longestOffS;
    private RelaySet was = RelaySet.none();

    Switches(Site site, long startEpochS) {
        this.site = site;
        int machines = site.machines().size();
        starts = new int[machines];
        closedS = new long[machines];
        longestOffS = new long[machines];
        changedEpochS = new long[machines];
        java.util.Arrays.fill(changedEpochS, startEpochS);
    }

    /** Whether anything changed. */
    boolean command(long epochS, Guarded command) {
        RelaySet closed = command.closed();
        if (closed.equals(was)) {
            return false;
        }
        for (int i = 0; i < starts.length; i++) {
            if (closed.has(i) != was.has(i)) {
                Reason reason = command.reasons().get(i);
                boolean overruled = command.overruled().has(i);
                events.add(new SwitchEvent(epochS, i, site.machines().get(i).id(), closed.has(i), reason, overruled));
                change(epochS, i, closed.has(i));
            }
        }
        was = closed;
        return true;
    }

    /** The controller is gone and relays fall by themselves: nobody decided it, so it is no event. */
    void fall(long epochS, RelaySet fallen) {
        for (int i = 0; i < starts.length; i++) {
            if (was.has(i) != fallen.has(i)) {
                change(epochS, i, fallen.has(i));
            }
        }
        was = fallen;
    }

    private void change(long epochS, int machine, boolean closes) {
        long sinceS = epochS - changedEpochS[machine];
        changedEpochS[machine] = epochS;
        if (closes) {
            longestOffS[machine] = Math.max(longestOffS[machine], starts[machine] == 0 ? 0 : sinceS);
            starts[machine]++;
        } else {
            closedS[machine] += sinceS;
        }
    }

    List<SwitchEvent> events() {
        return events;
    }

    List<MachineUse> uses(long endEpochS, Truth truth) {
        List<MachineUse> uses = new ArrayList<>();
        for (int i = 0; i < starts.length; i++) {
            long openS = was.has(i) ? endEpochS - changedEpochS[i] : 0;
            uses.add(new MachineUse(
                    site.machines().get(i).id(),
                    starts[i],
                    closedS[i] + openS,
                    longestOffS[i],
                    truth.energyJ(i) / J_PER_KWH));
        }
        return uses;
    }
}
