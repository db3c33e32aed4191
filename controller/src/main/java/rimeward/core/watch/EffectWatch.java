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
     * @param down machines that stand down for service: somebody works on them, and the air is not asked what they do; a meter that
     *     shows power is believed all the same, because hands may be inside
     * @param dtS since the last tick, s
     */
    public Watched watch(
            WatchState was,
            Judgement judgement,
            List<Reading> metersW,
            RelaySet closed,
            RelaySet down,
            TunnelModel tunnel,
            double dtS) {
        Reading[] powersW = believed(metersW);
        Air air = air(was, judgement, powersW, closed, down, tunnel, dtS);
        Delivery[] each = new Delivery[machines.length];
        MachineTrack[] tracks = new MachineTrack[machines.length];
        RelaySet failed = RelaySet.none();
        RelaySet failedLately = RelaySet.none();
        for (int i = 0; i < each.length; i++) {
            MachineTrack track = was.machines().get(i);
            boolean metered = powersW[i] instanceof Reading.Value;
            double sinceS = track.sinceChangeS(closed.has(i) != was.closed().has(i), dtS);
            each[i] = delivery(i, powersW[i], closed.has(i), sinceS, air);
            tracks[i] = track.after(machines[i], each[i], metered, air.tells(), sinceS, dtS);
            failed = tracks[i].failed() ? failed.with(i) : failed;
            failedLately = tracks[i].failedLately() ? failedLately.with(i) : failedLately;
        }
        DryTrace drying =
                was.drying().after(judgement.damp(), site.targets(), closed.meets(dryer), dryerIdles(each), dtS);
        return new Watched(
                new Deliveries(Arrays.asList(each), failed, failedLately, drying.hourInVain(dtS), drying.notDrying()),
                new WatchState(closed, Arrays.asList(tracks), air.heat(), air.stuck(), drying));
    }

    /** The same with every machine in use. */
    public Watched watch(
            WatchState was,
            Judgement judgement,
            List<Reading> metersW,
            RelaySet closed,
            TunnelModel tunnel,
            double dtS) {
        return watch(was, judgement, metersW, closed, RelaySet.none(), tunnel, dtS);
    }

    private Reading[] believed(List<Reading> metersW) {
        Reading[] powersW = new Reading[machines.length];
        for (int i = 0; i < powersW.length; i++) {
            powersW[i] = MeterWatch.believed(machines[i], metersW.get(i));
        }
        return powersW;
    }

    /**
     * What the air says of heat.
     *
     * @param tells whether it says anything: somebody sees it, and the door is shut
     */
    private record Air(boolean tells, HeatTrace heat, StuckTrace stuck) {}

    private Air air(
            WatchState was,
            Judgement judgement,
            Reading[] powersW,
            RelaySet closed,
            RelaySet down,
            TunnelModel tunnel,
            double dtS) {
        double arrivingW = arrivingW(powersW, closed);
        if (!(judgement.inside() instanceof Inside.Seen seen) || judgement.doorOpen()) {
            return new Air(false, was.heat().unseen(arrivingW, tunnel, dtS), StuckTrace.NONE);
        }
        HeatTrace heat = was.heat().after(seen, arrivingW, tunnel, dtS);
        return new Air(true, heat, stuck(was, powersW, closed, down, heat, tunnel, dtS));
    }

    private boolean dryerIdles(Delivery[] each) {
        return !dryer.isEmpty() && each[site.heater().stages().size()] == Delivery.NOT_GIVING;
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
            WatchState was,
            Reading[] powersW,
            RelaySet closed,
            RelaySet down,
            HeatTrace heat,
            TunnelModel tunnel,
            double dtS) {
        if (was.stuck().suspects().meets(down)) {
            return was.stuck().confirmed() ? was.stuck() : StuckTrace.NONE;
        }
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
            if (gave && !closed.has(i) && !down.has(i) && isUnmeteredHeat(i, powersW[i])) {
                opened = opened.with(i);
                openedW += machines[i].ratedW();
            }
        }
        return opened.isEmpty() || was.stuck().confirmed()
                ? was.stuck().after(heat.fastC(), tunnel, dtS)
                : StuckTrace.opened(opened, openedW, heat.fastC(), tunnel);
    }

    private boolean isUnmeteredHeat(int machine, Reading powerW) {
        return machines[machine].role().isHeatSource() && !(powerW instanceof Reading.Value);
    }

    /** Where no meter answers, the air is asked, once a machine has run long enough to show in it. */
    private Delivery delivery(int machine, Reading powerW, boolean closed, double sinceS, Air air) {
        Delivery shown = MeterWatch.delivery(machines[machine], powerW, closed, sinceS);
        if (!isUnmeteredHeat(machine, powerW)) {
            return shown;
        }
        if (shown == Delivery.UNSEEN && sinceS >= FELT_S && air.heat().heatMissing()) {
            return Delivery.NOT_GIVING;
        }
        boolean stays = shown == Delivery.OFF
                && air.stuck().confirmed()
                && air.stuck().suspects().has(machine);
        return stays ? Delivery.STUCK_ON : shown;
    }
}
