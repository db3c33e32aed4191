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
    /** Heat that began less than this ago says nothing in the air yet, s. Own choice. */
    private static final double FELT_S = 600;

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
        double[] sinceS = new double[tracks.length];
        for (int i = 0; i < each.length; i++) {
            boolean changed = closed.has(i) != was.closed().has(i);
            tracks[i] = was.machines().get(i);
            sinceS[i] = tracks[i].sinceChangeS(changed, dtS);
            powersW[i] = MeterWatch.believed(machines[i], metersW.get(i));
            each[i] = MeterWatch.delivery(machines[i], powersW[i], closed.has(i), sinceS[i]);
        }
        double arrivingW = arrivingW(powersW, closed);
        HeatTrace heat;
        StuckTrace stuck = StuckTrace.NONE;
        boolean airTells = false;
        if (judgement.inside() instanceof Inside.Seen seen && !judgement.doorOpen()) {
            airTells = true;
            heat = was.heat().after(seen, arrivingW, tunnel, dtS);
            stuck = stuck(was, powersW, closed, heat, tunnel, dtS);
            judgeUnseen(each, powersW, sinceS, heat, stuck);
        } else {
            heat = was.heat().unseen(arrivingW, tunnel, dtS);
        }
        DryTrace drying = was.drying().after(judgement.damp(), dryerRuns(each, closed), dtS);
        RelaySet failed = RelaySet.none();
        RelaySet failedLately = RelaySet.none();
        for (int i = 0; i < each.length; i++) {
            boolean metered = powersW[i] instanceof Reading.Value;
            tracks[i] = tracks[i].after(machines[i], each[i], metered, airTells, sinceS[i], dtS);
            failed = tracks[i].failed() ? failed.with(i) : failed;
            failedLately = tracks[i].failedLately() ? failedLately.with(i) : failedLately;
        }
        boolean inVain = drying.inVain(judgement.damp(), site.targets(), dtS);
        return new Watched(
                new Deliveries(Arrays.asList(each), failed, failedLately, inVain),
                new WatchState(closed, Arrays.asList(tracks), heat, stuck, drying));
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

    /** More heat explains any warmth; less heat begins a suspicion, unless one has been confirmed. */
    private StuckTrace stuck(
            WatchState was, Reading[] powersW, RelaySet closed, HeatTrace heat, TunnelModel tunnel, double dtS) {
        if (closed.equals(was.closed())) {
            return was.stuck().after(heat.fastC(), tunnel, dtS);
        }
        RelaySet opened = RelaySet.none();
        double openedW = 0;
        for (int i = 0; i < machines.length; i++) {
            if (machines[i].role().isHeatSource()
                    && closed.has(i)
                    && !was.closed().has(i)) {
                return StuckTrace.NONE;
            }
            boolean gave = was.closed().has(i) && !was.machines().get(i).failed();
            if (gave && !closed.has(i) && isUnmeteredHeat(i, powersW)) {
                opened = opened.with(i);
                openedW += machines[i].ratedW();
            }
        }
        return opened.isEmpty() || was.stuck().confirmed()
                ? was.stuck().after(heat.fastC(), tunnel, dtS)
                : StuckTrace.opened(opened, openedW, heat.fastC(), tunnel);
    }

    private boolean isUnmeteredHeat(int machine, Reading[] powersW) {
        return machines[machine].role().isHeatSource() && !(powersW[machine] instanceof Reading.Value);
    }

    /** Where no meter answers, the air is asked, once a machine has run long enough to show in it. */
    private void judgeUnseen(Delivery[] each, Reading[] powersW, double[] sinceS, HeatTrace heat, StuckTrace stuck) {
        for (int i = 0; i < each.length; i++) {
            boolean unmetered = isUnmeteredHeat(i, powersW);
            if (unmetered && each[i] == Delivery.UNSEEN && sinceS[i] >= FELT_S && heat.heatMissing()) {
                each[i] = Delivery.NOT_GIVING;
            } else if (unmetered
                    && each[i] == Delivery.OFF
                    && stuck.confirmed()
                    && stuck.suspects().has(i)) {
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
