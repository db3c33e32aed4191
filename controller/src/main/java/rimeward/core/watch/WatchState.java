package rimeward.core.watch;

import java.util.Collections;
import java.util.List;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/**
 * What the watch remembers from one tick to the next.
 *
 * @param closed relays at the last tick
 * @param machines one for each machine
 */
public record WatchState(RelaySet closed, List<MachineTrack> machines, HeatTrace heat, DryTrace drying) {
    public static WatchState start(Site site) {
        return new WatchState(
                RelaySet.none(),
                Collections.nCopies(site.machines().size(), MachineTrack.START),
                HeatTrace.START,
                DryTrace.IDLE);
    }
}
