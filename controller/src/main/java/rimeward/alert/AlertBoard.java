package rimeward.alert;

import java.util.ArrayList;
import java.util.List;
import rimeward.core.Outcome;
import rimeward.core.guard.Holder;
import rimeward.core.judgement.Inside;
import rimeward.core.judgement.Trust;
import rimeward.core.watch.Delivery;
import rimeward.site.Site;

/** What stands wrong now. One thread, the control loop's, owns it. */
public final class AlertBoard {
    private static final double CLEAR_OF_FLOOR_K = 0.3;

    private static final Door[] DOORS = Door.values(); // once: values() copies

    private Site site;
    private final List<Slot> sensors = new ArrayList<>();
    private final List<Slot> weak = new ArrayList<>();
    private final List<Slot> stuck = new ArrayList<>();
    private final Slot floor;
    private final Slot barred;
    private final Slot blind;
    private final Slot notDrying;
    private final Slot tank;
    private final Slot airing;
    private final Slot law;
    private final List<Slot> doors = new ArrayList<>();
    private final Slot clock;
    private final Slot late;
    private long lastMs;
    private boolean restarted;
    private boolean sameBoot;
    private int setAside;

    public AlertBoard(Site site) {
        this.site = site;
        floor = new Slot(AlertKind.FLOOR_CROSSED, site.id(), 60, 300);
        barred = new Slot(AlertKind.TOO_HOT, site.id(), 60, 300);
        blind = new Slot(AlertKind.BLIND, site.id(), 0, 60);
        notDrying = new Slot(AlertKind.DRYER_NOT_DRYING, site.id(), 0, 60);
        tank = new Slot(AlertKind.TANK_FULL, site.id(), 0, 60);
        airing = new Slot(AlertKind.AIRING, site.id(), 900, 60);
        law = new Slot(AlertKind.LAW_FAILED, site.id(), 0, 600);
        for (Door door : DOORS) {
            doors.add(new Slot(AlertKind.DOOR_FAILED, door.subject(), 0, 60));
        }
        clock = new Slot(AlertKind.CLOCK_JUMPED, site.id(), 0, 0);
        late = new Slot(AlertKind.TICKS_LATE, site.id(), 0, 300);
        site.sensors().forEach(s -> sensors.add(new Slot(AlertKind.SENSOR_DOUBTED, s.id(), 120, 300)));
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
    }

    /** The same place with other limits, from the next outcome on. */
    public void nowAt(Site other) {
        site = other;
    }

    /** What must survive a restart. */
    public List<AlertSlot> saved() {
        return slots().stream().filter(Slot::isStirred).map(Slot::saved).toList();
    }

    private List<Slot> slots() {
        List<Slot> all = new ArrayList<>(List.of(floor, barred, blind, notDrying, tank, airing, law, clock, late));
        all.addAll(sensors);
        all.addAll(weak);
        all.addAll(stuck);
        all.addAll(doors);
        return all;
    }

    /** What was raised or cleared by this outcome, mostly nothing. */
    public List<Alert> after(Outcome outcome) {
        return after(outcome, Troubles.NONE);
    }

    /** The same, with what is wrong with the controller itself. */
    public List<Alert> after(Outcome outcome, Troubles troubles) {
        double dtS = (outcome.frame().tick().elapsedMs() - lastMs) / 1000.0;
        lastMs = outcome.frame().tick().elapsedMs();
        boolean dark = outcome.outageS() > 0;
        Changes changes = new Changes(outcome, dark ? 0 : dtS); // nobody saw how long anything lasted in the dark
        if (restarted && (sameBoot || !dark)) {
            changes.tell(AlertKind.SERVICE_RESTARTED, site.id(), Alert.Change.RAISED);
        } else if (dark) {
            changes.tell(AlertKind.POWER_WAS_CUT, site.id(), Alert.Change.RAISED); // an event: it has no end to tell of
        }
        restarted = false;
        if (troubles.timesRecordSetAside() > setAside) {
            setAside = troubles.timesRecordSetAside();
            changes.tell(AlertKind.RECORD_SET_ASIDE, site.id(), Alert.Change.RAISED); // an event too
        }
        changes.look(floor, belowFloor(outcome));
        changes.look(barred, outcome.guarded().holder() == Holder.BARRED);
        changes.look(blind, outcome.judgement().trust() == Trust.BLIND);
        changes.look(tank, outcome.judgement().tankFull());
        changes.look(notDrying, outcome.deliveries().dryerNotDrying());
        changes.look(airing, AiringAdvice.holds(site, outcome.judgement(), airing.isRaised()));
        changes.look(law, outcome.lawFailed());
        boolean full = outcome.judgement().trust() == Trust.FULL; // then no sensor is in doubt
        for (int i = 0; i < sensors.size(); i++) {
            changes.look(
                    sensors.get(i),
                    !full
                            && (outcome.judgement().airVerdicts().get(i).isDoubted()
                                    || outcome.judgement().rhVerdicts().get(i).isDoubted()));
        }
        for (int i = 0; i < weak.size(); i++) {
            changes.look(weak.get(i), outcome.deliveries().failed().has(i)); // resting, it is not mended yet
            changes.look(stuck.get(i), outcome.deliveries().of(i) == Delivery.STUCK_ON);
        }
        for (int i = 0; i < DOORS.length; i++) {
            changes.look(doors.get(i), troubles.isFailing(DOORS[i]));
        }
        changes.look(clock, troubles.hasClockJumped());
        changes.look(late, troubles.isTickLate());
        return changes.found;
    }

    private boolean belowFloor(Outcome outcome) {
        double limitC = site.floorC() + (floor.isRaised() ? CLEAR_OF_FLOOR_K : 0);
        return outcome.judgement().inside() instanceof Inside.Seen seen && seen.coldestC() < limitC;
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
            if (slot.changes(present, dtS)) {
                tell(slot.kind, slot.subject, slot.isRaised() ? Alert.Change.RAISED : Alert.Change.CLEARED);
            }
        }

        void tell(AlertKind kind, String subject, Alert.Change change) {
            if (found.isEmpty()) {
                found = new ArrayList<>();
            }
            String text = AlertText.of(site, kind, subject, change, outcome);
            found.add(new Alert(kind, subject, change, outcome.frame().tick(), text));
        }
    }
}
