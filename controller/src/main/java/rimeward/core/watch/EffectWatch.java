package rimeward.core.watch;

import java.util.Arrays;
import java.util.List;
import rimeward.core.judgement.Inside;
import rimeward.core.judgement.Judgement;
import rimeward.core.reading.Reading;
import rimeward.core.tunnel.TunnelModel;
import rimeward.site.Machine;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/**
 * Checks the effect, not only the command: by each machine's meter, and where there is none by the air. Pure: {@link
 * #watch} is a function of its arguments and of the site alone.
 */
public final class EffectWatch {
    private final Site site;
    private final Machine[] machines; // an array: every tick walks it several times
    private final RelaySet dryer;

    public EffectWatch(Site site) {
        this.site = site;
        machines = site.machines().toArray(new Machine[0]);
        dryer = site.dryerRelay();
    }

    /**
     * Watches one tick.
     *
     * @param metersW what each machine's meter shows, W
     * @param closed relays as commanded at the last tick
     * @param dtS since the last tick, s
     */
    public Watched watch(
            WatchState was,
            Judgement judgement,
            List<Reading> metersW,
            RelaySet closed,
            TunnelModel tunnel,
            double dtS) {
        MachineTrack[] tracks = new MachineTrack[machines.length];
        Delivery[] each = new Delivery[tracks.length];
        Reading[] powersW = new Reading[tracks.length];
        for (int i = 0; i < each.length; i++) {
            boolean changed = closed.has(i) != was.closed().has(i);
            double sinceS = was.machines().get(i).sinceChangeS(changed, dtS);
            powersW[i] = MeterWatch.believed(machines[i], metersW.get(i));
            each[i] = MeterWatch.delivery(machines[i], powersW[i], closed.has(i), sinceS);
        }
        HeatTrace heat = was.heat();
        if (judgement.inside() instanceof Inside.Seen seen && !judgement.doorOpen()) {
            heat = heat.after(seen, arrivingW(powersW, closed), tunnel, dtS);
            judgeUnseen(each, powersW, heat);
        }
        DryTrace drying = was.drying().after(judgement.damp(), dryerRuns(each, closed), dtS);
        RelaySet failed = RelaySet.none();
        RelaySet failedLately = RelaySet.none();
        for (int i = 0; i < each.length; i++) {
            boolean changed = closed.has(i) != was.closed().has(i);
            MachineTrack track = was.machines().get(i);
            boolean metered = powersW[i] instanceof Reading.Value;
            tracks[i] = track.after(machines[i], each[i], metered, track.sinceChangeS(changed, dtS), dtS);
            failed = tracks[i].failed() ? failed.with(i) : failed;
            failedLately = tracks[i].failedLately() ? failedLately.with(i) : failedLately;
        }
        boolean inVain = drying.inVain(judgement.damp(), site.targets(), dtS);
        return new Watched(
                new Deliveries(Arrays.asList(each), failed, failedLately, inVain),
                new WatchState(closed, Arrays.asList(tracks), heat, drying));
    }

    /** Heat that should be arriving: what meters show, and rated power where there is none, W. */
    private double arrivingW(Reading[] powersW, RelaySet closed) {
        double sumW = 0;
        for (int i = 0; i < machines.length; i++) {
            if (machines[i].role().isHeatSource()) {
                if (powersW[i] instanceof Reading.Value value) {
                    sumW += value.value();
                } else if (closed.has(i)) {
                    sumW += machines[i].ratedW();
                }
            }
        }
        return sumW;
    }

    /** Where no meter answers, the air is asked. */
    private void judgeUnseen(Delivery[] each, Reading[] powersW, HeatTrace heat) {
        for (int i = 0; i < each.length; i++) {
            boolean unmetered = machines[i].role().isHeatSource() && !(powersW[i] instanceof Reading.Value);
            if (unmetered && each[i] == Delivery.UNSEEN && heat.heatMissing()) {
                each[i] = Delivery.NOT_GIVING;
            } else if (unmetered && each[i] == Delivery.OFF && heat.heatStays()) {
                each[i] = Delivery.STUCK_ON;
            }
        }
    }

    private boolean dryerRuns(Delivery[] each, RelaySet closed) {
        for (int i = 0; i < each.length; i++) {
            if (dryer.has(i) && closed.has(i)) {
                return each[i] == Delivery.GIVING || each[i] == Delivery.UNSEEN;
            }
        }
        return false;
    }
}
