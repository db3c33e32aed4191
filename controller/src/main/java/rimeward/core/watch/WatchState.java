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
 * @param failedLeftS for each machine, how long it still counts as failed, s
 */
public record WatchState(
        RelaySet closed, List<Double> sinceChangeS, List<Double> failedLeftS, HeatTrace heat, DryTrace drying) {
    public static WatchState start(Site site) {
        List<Double> zeros = Collections.nCopies(site.machines().size(), 0.0);
        return new WatchState(RelaySet.none(), zeros, zeros, HeatTrace.START, DryTrace.IDLE);
    }
}
