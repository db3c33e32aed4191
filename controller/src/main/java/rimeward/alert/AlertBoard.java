package rimeward.alert;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Supplier;
import rimeward.core.Outcome;
import rimeward.core.guard.Holder;
import rimeward.core.judgement.Inside;
import rimeward.core.judgement.Judgement;
import rimeward.core.judgement.Outside;
import rimeward.core.judgement.Trust;
import rimeward.core.tunnel.LossStanding;
import rimeward.core.watch.Delivery;
import rimeward.site.Site;

/** What stands wrong now. One thread, the control loop's, owns it. */
public final class AlertBoard {
    private static final double CLEAR_OF_FLOOR_K = 0.3;

    private static final Door[] DOORS = Door.values(); // once: values() copies

    private Site site;
    private final List<List<Slot>> perSensor = List.of(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
    private boolean sensorsStir = true; // until it was looked
    private final List<Slot> weak = new ArrayList<>();
    private final List<Slot> stuck = new ArrayList<>();
    private final Slot floor;
    private final Slot barred;
    private final Slot blind;
    private final Slot notDrying;
    private final Slot tank;
    private final Slot airing;
    private final Slot frost;
    private final Slot nearlyFull;
    private final Slot wet;
    private final Slot loss;
    private final Slot lossRose;
    private final Slot lossFell;
    private final Slot open;
    private final Slot unset;
    private final Slot disk;
    private final Slot voltage;
    private Watches watches;
    private final Slot law;
    private final List<Slot> doors = new ArrayList<>();
    private boolean doorsStir = true; // until it was looked
    private final Slot clock;
    private final Slot restart;
    private final Slot powerCut;
    private final Slot setAsideRecord;
    private final List<Slot> acknowledged = new ArrayList<>();
    private final Slot late;
    private long lastMs;
    private boolean restarted;
    private boolean sameBoot;
    private boolean clockWasSet;
    private int setAside;

    /** Where nobody looks at the nights' heat loss. */
    public AlertBoard(Site site) {
        this(site, () -> LossStanding.UNKNOWN);
    }

    /** @param heatLoss asked at each tick what the nights say of the heat loss; must not wait */
    public AlertBoard(Site site, Supplier<LossStanding> heatLoss) {
        this.site = site;
        floor = new Slot(AlertKind.FLOOR_CROSSED, site.id(), 60, 300);
        barred = new Slot(AlertKind.TOO_HOT, site.id(), 60, 300);
        blind = new Slot(AlertKind.BLIND, site.id(), 0, 300);
        notDrying = new Slot(AlertKind.DRYER_NOT_DRYING, site.id(), 0, 60);
        tank = new Slot(AlertKind.TANK_FULL, site.id(), 0, 300);
        airing = new Slot(AlertKind.AIRING, site.id(), 900, 60);
        frost = new Slot(AlertKind.FROST_RISK, site.id(), 600, 3600);
        nearlyFull = new Slot(AlertKind.TANK_NEARLY_FULL, site.id(), 0, 60);
        wet = new Slot(AlertKind.TOO_WET, site.id(), 0, 600);
        loss = new Slot(AlertKind.EXTRA_LOSS, site.id(), 900, 1800);
        lossRose = new Slot(AlertKind.HEAT_LOSS_ROSE, site.id(), 0, 60);
        lossFell = new Slot(AlertKind.HEAT_LOSS_FELL, site.id(), 0, 60);
        open = new Slot(AlertKind.DOOR_OPEN, site.id(), 900, 60);
        unset = new Slot(AlertKind.CLOCK_NEVER_SET, site.id(), 3600, 60);
        disk = new Slot(AlertKind.DISK_NEARLY_FULL, site.id(), 60, 3600);
        voltage = new Slot(AlertKind.UNDER_VOLTAGE, site.id(), 10, 3600);
        watches = new Watches(site, heatLoss);
        law = new Slot(AlertKind.LAW_FAILED, site.id(), 0, 600);
        for (Door door : DOORS) {
            doors.add(new Slot(AlertKind.DOOR_FAILED, door.subject(), 0, 600));
        }
        clock = new Slot(AlertKind.CLOCK_JUMPED, site.id(), 0, 0);
        late = new Slot(AlertKind.TICKS_LATE, site.id(), 0, 300);
        restart = Slot.event(AlertKind.SERVICE_RESTARTED, site.id());
        powerCut = Slot.event(AlertKind.POWER_WAS_CUT, site.id());
        setAsideRecord = Slot.event(AlertKind.RECORD_SET_ASIDE, site.id());
        site.sensors().forEach(s -> {
            perSensor.get(0).add(new Slot(AlertKind.SENSOR_LOST, s.id(), 120, 300));
            perSensor.get(1).add(new Slot(AlertKind.SENSOR_DOUBTED, s.id(), 120, 300));
            perSensor.get(2).add(new Slot(AlertKind.SENSORS_DISAGREE, s.id(), 120, 300));
        });
        site.machines().forEach(m -> {
            weak.add(new Slot(AlertKind.HEAT_NOT_ARRIVING, m.id(), 0, 600));
            stuck.add(new Slot(AlertKind.RELAY_WELDED, m.id(), 30, 600));
        });
    }

    /**
     * As it stood before a restart; what the site no longer has is forgotten.
     *
     * @param elapsedMs monotonic time of the last tick before it, ms
     * @param machineStayedOn whether only the program ended, and not the power
     */
    public void resume(List<AlertSlot> saved, long elapsedMs, boolean machineStayedOn) {
        lastMs = elapsedMs;
        restarted = true;
        sameBoot = machineStayedOn;
        for (Slot slot : slots()) {
            saved.stream()
                    .filter(s -> s.kind() == slot.kind && s.subject().equals(slot.subject))
                    .forEach(slot::resume);
        }
        watches.tank().resume(nearlyFull.sumS());
        watches.mould().resume(wet.sumS());
    }

    /** The same place with other limits, from the next outcome on. */
    public void nowAt(Site other) {
        site = other;
        watches = watches.at(other);
    }

    /** What must survive a restart. */
    public List<AlertSlot> saved() {
        return slots().stream().filter(Slot::isStirred).map(Slot::saved).toList();
    }

    private List<Slot> slots() {
        List<Slot> all = new ArrayList<>(List.of(floor, barred, blind, notDrying, tank, airing, law, clock, late));
        all.addAll(List.of(restart, powerCut, setAsideRecord));
        all.addAll(List.of(frost, nearlyFull, wet, loss, lossRose, lossFell, open, unset, disk, voltage));
        perSensor.forEach(all::addAll);
        all.addAll(weak);
        all.addAll(stuck);
        all.addAll(doors);
        return all;
    }

    /**
     * Somebody knows of it: told with the next outcome, and left in peace from then on, see {@link Pace}. What happened in a moment
     * is over with that.
     *
     * @return whether it stands
     */
    public boolean acknowledge(String id) {
        for (Slot slot : slots()) {
            if (slot.isRaised() && slot.id().equals(id)) {
                if (slot.acknowledge()) {
                    acknowledged.add(slot);
                }
                if (slot == nearlyFull) {
                    watches.tank().emptied();
                }
                return true;
            }
        }
        return false;
    }

    /** What became of any alert by this outcome, the worst first; mostly nothing. */
    public List<Alert> after(Outcome outcome) {
        return after(outcome, Troubles.NONE);
    }

    /** The same, with what is wrong with the controller itself. */
    public List<Alert> after(Outcome outcome, Troubles troubles) {
        double dtS = (outcome.frame().tick().elapsedMs() - lastMs) / 1000.0;
        lastMs = outcome.frame().tick().elapsedMs();
        boolean dark = outcome.outageS() > 0;
        Changes changes = new Changes(outcome, dark ? 0 : dtS); // nobody saw how long anything lasted in the dark
        acknowledged.forEach(changes::acknowledge);
        acknowledged.clear();
        boolean again = restarted && (sameBoot || !dark);
        changes.event(restart, again);
        changes.event(powerCut, dark && !again);
        restarted = false;
        changes.event(setAsideRecord, troubles.timesRecordSetAside() > setAside);
        setAside = Math.max(setAside, troubles.timesRecordSetAside());
        changes.look(floor, belowFloor(outcome));
        changes.look(barred, outcome.guarded().holder() == Holder.BARRED);
        changes.look(blind, outcome.judgement().trust() == Trust.BLIND);
        changes.look(tank, outcome.judgement().tankFull());
        changes.look(notDrying, outcome.deliveries().dryerNotDrying());
        changes.look(airing, AiringAdvice.holds(site, outcome.judgement(), airing.isRaised()));
        changes.look(law, outcome.lawFailed());
        watched(changes, outcome, dark ? 0 : dtS);
        if (sensorsStir || outcome.judgement().trust() != Trust.FULL) { // with full trust no sensor is in doubt
            sensorsStir = sensors(changes, outcome.judgement());
        }
        for (int i = 0; i < weak.size(); i++) {
            changes.look(weak.get(i), outcome.deliveries().failed().has(i)); // resting, it is not mended yet
            changes.look(stuck.get(i), outcome.deliveries().of(i) == Delivery.STUCK_ON);
        }
        if (doorsStir || troubles.isAnyFailing()) {
            doorsStir = doors(changes, troubles);
        }
        clockWasSet |= outcome.frame().tick().wall().trusted();
        changes.look(unset, !clockWasSet);
        changes.look(disk, troubles.isDiskNearlyFull());
        changes.look(voltage, troubles.isVoltageLow());
        changes.look(clock, troubles.hasClockJumped());
        changes.look(late, troubles.isTickLate());
        return changes.worstFirst();
    }

    /** Whether anything stands, or begins to, with any sensor. */
    private boolean sensors(Changes changes, Judgement judgement) {
        boolean stir = false;
        for (int i = 0; i < site.sensors().size(); i++) {
            for (List<Slot> kind : perSensor) {
                Slot slot = kind.get(i);
                changes.look(slot, SensorText.isSo(slot.kind, judgement, i));
                stir |= !slot.isQuiet();
            }
        }
        return stir;
    }

    /** Whether anything stands, or begins to, with any part of the controller. */
    private boolean doors(Changes changes, Troubles troubles) {
        boolean stir = false;
        for (int i = 0; i < DOORS.length; i++) {
            changes.look(doors.get(i), troubles.isFailing(DOORS[i]));
            stir |= !doors.get(i).isQuiet();
        }
        return stir;
    }

    /** What has to be followed over hours. */
    private void watched(Changes changes, Outcome outcome, double dtS) {
        changes.look(frost, watches.frost().holds(site, watches.model(), outcome, frost.isRaised(), dtS));
        changes.look(loss, watches.cover().holds(site, outcome, loss.isRaised(), dtS));
        watches.loss().look();
        changes.look(lossRose, watches.loss().holds(true, lossRose.isRaised()));
        changes.look(lossFell, watches.loss().holds(false, lossFell.isRaised()));
        changes.look(wet, watches.mould().holds(outcome, dtS));
        wet.sum(watches.mould().wetS());
        changes.look(nearlyFull, watches.tank().holds(site, outcome, dtS));
        nearlyFull.sum(watches.tank().ranS());
        changes.look(open, !airing.isRaised() && isOpenInTheCold(outcome));
    }

    /** By day a door stands open for good reasons. */
    private boolean isOpenInTheCold(Outcome outcome) {
        boolean mild = outcome.judgement().outside() instanceof Outside.Seen seen
                && seen.airC() >= site.targets().bandEndC(site.floorC());
        return outcome.judgement().doorOpen() && !mild;
    }

    private boolean belowFloor(Outcome outcome) {
        double limitC = site.floorC() + (floor.isRaised() ? CLEAR_OF_FLOOR_K : 0);
        return outcome.judgement().inside() instanceof Inside.Seen seen
                ? seen.coldestC() < limitC
                : floor.isRaised(); // while nobody can see, it is not over
    }

    /** One tick's look at every slot. */
    private final class Changes {
        private final Outcome outcome;
        private final double dtS;
        private List<Alert> found = List.of();

        Changes(Outcome outcome, double dtS) {
            this.outcome = outcome;
            this.dtS = dtS;
        }

        void look(Slot slot, boolean present) {
            if (present || !slot.isQuiet()) { // seldom, and every tick asks it of every slot
                slot.look(present, dtS, epochS()).ifPresent(change -> tell(slot, change));
            }
        }

        void event(Slot slot, boolean happens) {
            if (!happens) {
                look(slot, false);
                return;
            }
            if (slot.isRaised()) {
                tell(slot, Alert.Change.CLEARED); // another of its kind takes its place
            }
            slot.happened(epochS());
            tell(slot, Alert.Change.RAISED);
        }

        void acknowledge(Slot slot) {
            tell(slot, Alert.Change.ACKNOWLEDGED);
            if (slot.isEvent()) {
                tell(slot, Alert.Change.CLEARED);
                slot.end();
            }
        }

        private long epochS() {
            return outcome.frame().tick().wall().epochMs() / 1000;
        }

        private void tell(Slot slot, Alert.Change change) {
            if (found.isEmpty()) {
                found = new ArrayList<>();
            }
            String text = AlertText.of(site, watches, slot.kind, slot.subject, change, outcome);
            found.add(new Alert(
                    slot.id(), slot.kind, slot.subject, change, outcome.frame().tick(), text));
        }

        /** When everything fails at once, what endangers the plants is read first. Alerts of one incident keep their order. */
        List<Alert> worstFirst() {
            if (found.size() > 1) {
                found.sort(Comparator.comparing(alert -> alert.kind().severity()));
            }
            return found;
        }
    }
}
