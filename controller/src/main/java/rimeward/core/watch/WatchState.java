package rimeward.core.watch;

import java.util.Collections;
import java.util.List;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/**
 * What the watch remembers from one tick to the next.
 *
 * @param closed relays at the last tick
 * @param sinceChangeS for each machine, how long its relay has been as it is, s
 */
public record WatchState(RelaySet closed, List<Double> sinceChangeS, HeatTrace heat, DryTrace drying) {
    public static WatchState start(Site site) {
        return new WatchState(
                RelaySet.none(), Collections.nCopies(site.machines().size(), 0.0), HeatTrace.START, DryTrace.IDLE);
    }
}
