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
 * @param heat heat by its effect
 * @param stuck heat that stays after its relay has opened
 */
public record WatchState(
        RelaySet closed, List<MachineTrack> machines, HeatTrace heat, StuckTrace stuck, DryTrace drying) {
    public static WatchState start(Site site) {
        return new WatchState(
                RelaySet.none(),
                Collections.nCopies(site.machines().size(), MachineTrack.START),
                HeatTrace.START,
                StuckTrace.NONE,
                DryTrace.IDLE);
    }
}
