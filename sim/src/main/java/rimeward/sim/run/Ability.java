package rimeward.sim.run;

import java.util.EnumSet;
import java.util.Set;
import rimeward.sim.fault.FaultClock;
import rimeward.sim.fault.FaultKind;
import rimeward.sim.physics.DryerPhase;
import rimeward.sim.physics.HeatLedger;
import rimeward.sim.physics.HeatPath;
import rimeward.sim.world.Truth;
import rimeward.sim.world.World;
import rimeward.site.Drying;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/** Which machines could give heat, whatever is asked of them; what is wrong is looked up again only when that changes. */
final class Ability {
    private static final Set<FaultKind> OF_MACHINES = EnumSet.of(
            FaultKind.HEATER_FUSE,
            FaultKind.RESIDUAL_CURRENT,
            FaultKind.HEATER_RELAY_OPEN,
            FaultKind.HEATER_RELAY_WELDED,
            FaultKind.HEATER_FAN_STALLED,
            FaultKind.DRYER_RELAY_OPEN,
            FaultKind.DRYER_RELAY_WELDED,
            FaultKind.DRYER_TRIP,
            FaultKind.DRYER_ICED,
            FaultKind.HUMIDISTAT_OPEN,
            FaultKind.POWER_FEEDBACK_LOST);

    private static final Set<FaultKind> OF_SURROUNDINGS = EnumSet.of(FaultKind.DOOR_OPEN, FaultKind.COVER_TORN);

    private static final Set<FaultKind> OF_SENSORS = EnumSet.of(
            FaultKind.SENSOR_LOST,
            FaultKind.SENSOR_FROZEN,
            FaultKind.SENSOR_OFFSET,
            FaultKind.SENSOR_DRIFT,
            FaultKind.SENSOR_SPIKE,
            FaultKind.SENSOR_NOISE,
            FaultKind.SENSOR_WET);

    /** A sensor that told untruths is doubted for a while after, and a machine that failed needs a while to be noticed, s. */
    private static final double AFTERMATH_S = 900;

    /** A locked-out dryer comes back 1 K above its minimum, and sensors on cold benches read below the mean air, K. */
    private static final double CLEAR_OF_MINIMUM_K = 2;

    private final World world;
    private final Truth truth;
    private final Site site;
    private final int dryer;
    private final double dryerFromC;
    private double knownUntilS = Double.NEGATIVE_INFINITY;
    private RelaySet liveStages = RelaySet.none();
    private boolean dryerLive;
    private RelaySet down = RelaySet.none();
    private double downAtS = Double.NEGATIVE_INFINITY;
    private double dryerJ;
    private double dryerW;
    private final Recency machines = new Recency(OF_MACHINES);
    private final Recency surroundings = new Recency(OF_SURROUNDINGS);
    private final Recency sensors = new Recency(OF_SENSORS);

    Ability(World world, Site site) {
        this.world = world;
        this.site = site;
        truth = world.truth();
        dryerFromC = site.drying() instanceof Drying.Dryer plate
                ? plate.minimumAirC() + CLEAR_OF_MINIMUM_K
                : Double.POSITIVE_INFINITY;
        dryer = site.dryerRelay().isEmpty() ? -1 : site.heater().stages().size();
    }

    /** As a tick of this length ends: looks again if something began or ended since. */
    void refresh(long lastsS) {
        HeatLedger heat = truth.heat();
        double nowJ = heat.inJ(HeatPath.DRYER) + heat.inJ(HeatPath.COLLECTION);
        dryerW = (nowJ - dryerJ) / lastsS;
        dryerJ = nowJ;
        double changeS = world.faults().nextChangeS();
        if (changeS == knownUntilS) {
            return;
        }
        knownUntilS = changeS;
        FaultClock faults = world.faults();
        boolean mains = !faults.isActive(FaultKind.POWER_CUT) && !faults.isActive(FaultKind.RESIDUAL_CURRENT);
        liveStages = RelaySet.none();
        for (int i = 0; i < site.heater().stages().size(); i++) {
            String id = site.machines().get(i).id();
            boolean live = mains
                    && !faults.isActive(FaultKind.HEATER_FUSE)
                    && !faults.isActive(FaultKind.HEATER_RELAY_OPEN, id);
            liveStages = live ? liveStages.with(i) : liveStages;
        }
        dryerLive = dryer >= 0
                && mains
                && !faults.isActive(FaultKind.DRYER_RELAY_OPEN)
                && !faults.isActive(FaultKind.DRYER_TRIP);
        machines.look(faults);
        surroundings.look(faults);
        sensors.look(faults);
    }

    /** Machines that the grower took out of use: they could not give heat, as if they had failed. */
    void standDown(RelaySet others) {
        down = others;
        downAtS = down.isEmpty() ? downAtS : world.elapsedS();
    }

    boolean isMachineFaulty() {
        return machines.isRecent() || world.elapsedS() - downAtS < AFTERMATH_S;
    }

    boolean isDisturbed() {
        return surroundings.isRecent();
    }

    boolean areSensorsTruthful() {
        return !sensors.isRecent();
    }

    /** Whether any of some faults is at work, or was of late. */
    private final class Recency {
        private final Set<FaultKind> kinds;
        private boolean active;
        private double lastS = Double.NEGATIVE_INFINITY;

        Recency(Set<FaultKind> kinds) {
            this.kinds = kinds;
        }

        void look(FaultClock faults) {
            lastS = active ? world.elapsedS() : lastS;
            active = kinds.stream().anyMatch(faults::isActive);
        }

        boolean isRecent() {
            return active || world.elapsedS() - lastS < AFTERMATH_S;
        }
    }

    /** Heater stages that give heat once closed. */
    RelaySet heaterStages() {
        return truth.isHeaterDialOpen() || truth.isHeaterCutOutOpen() ? RelaySet.none() : liveStages.minus(down);
    }

    boolean heaterHolds() {
        for (int i = 0; i < site.heater().stages().size(); i++) {
            if (truth.powerW(i) > 0) {
                return true;
            }
        }
        return false;
    }

    /** Whether the dryer gives heat once asked; by its plate, it is not asked below its minimum until the air is clear of that. */
    boolean isDryerAble() {
        if (down.meets(site.dryerRelay())) {
            return false;
        }
        DryerPhase phase = dryerLive ? truth.dryerPhase() : DryerPhase.REST;
        return phase == DryerPhase.RUNNING
                || (dryerLive
                        && phase != DryerPhase.REST
                        && phase != DryerPhase.DEFROST
                        && !truth.isDryerSatisfied()
                        && !truth.isTankFull()
                        && !truth.isDryerTooCold()
                        && truth.airC() >= dryerFromC);
    }

    boolean dryerGives() {
        return dryer >= 0 && truth.dryerPhase() == DryerPhase.RUNNING;
    }

    boolean dryerRunsOn() {
        return dryer >= 0 && !truth.isContactClosed(dryer) && truth.dryerPhase() == DryerPhase.RUN_ON;
    }

    /**
     * Heat of all that could give it, as much as the circuit carries, W: by the plates, but of a running dryer what it truly gives, since a
     * compressor in cold air draws a third of its plate.
     */
    double ableW() {
        double leftW = site.circuit().limitW();
        double sumW = 0;
        RelaySet able = isDryerAble() ? heaterStages().or(site.dryerRelay()) : heaterStages();
        for (int i = 0; i < site.machines().size(); i++) {
            double ratedW = site.machines().get(i).ratedW();
            if (able.has(i) && ratedW <= leftW) {
                leftW -= ratedW;
                sumW += i == dryer && dryerGives() ? dryerW : ratedW;
            }
        }
        return sumW;
    }
}
