package rimeward.core.watch;

import java.util.ArrayList;
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

    /** What must survive a restart. */
    public Failures failures() {
        RelaySet failed = RelaySet.none();
        List<Double> sinceS = new ArrayList<>();
        for (int i = 0; i < machines.size(); i++) {
            failed = machines.get(i).failed() ? failed.with(i) : failed;
            sinceS.add(machines.get(i).sinceFailedS());
        }
        return new Failures(failed, sinceS, drying.notDrying(), drying.unaskedS());
    }

    /** After a restart or a power cut: nothing is known of what runs, but what has failed is not mended by that. */
    public static WatchState resume(Site site, Failures failures) {
        WatchState fresh = start(site);
        List<MachineTrack> machines = new ArrayList<>(fresh.machines());
        for (int i = 0; i < machines.size(); i++) {
            if (failures.failed().has(i)) {
                machines.set(i, new MachineTrack(0, true, failures.sinceS().get(i)));
            }
        }
        return new WatchState(
                fresh.closed(),
                List.copyOf(machines),
                fresh.heat(),
                fresh.stuck(),
                DryTrace.resting(failures.dryerNotDrying(), failures.dryerUnaskedS()));
    }
}
