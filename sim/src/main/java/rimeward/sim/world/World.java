package rimeward.sim.world;

import rimeward.sim.fault.FaultClock;
import rimeward.sim.fault.FaultKind;
import rimeward.sim.physics.Tunnel;
import rimeward.sim.weather.WeatherCursor;

/**
 * The tunnel, its weather and its faults, moved through time by whoever holds the clock; for one thread. Between two moves contacts may
 * be asked to close or open. Moving allocates nothing unless a fault begins or ends.
 *
 * <p>Machines are counted as in {@link WorldPlan#machineIds()}.
 */
public final class World {
    /** The weather is held constant for no longer than this, s. */
    private static final double WEATHER_S = 10;

    private final Tunnel tunnel;
    private final WeatherCursor weather;
    private final long startEpochS;
    private final FaultClock faults;
    private final Contacts contacts;
    private final GrowerRounds rounds;
    private final Truth truth;
    private double elapsedS;
    private double nextRoundS;

    public World(WorldPlan plan) {
        tunnel = new Tunnel(plan.tunnel(), plan.machines(), plan.start());
        weather = plan.weather().cursor();
        startEpochS = plan.startEpochS();
        faults = new FaultClock(plan.faults());
        contacts = new Contacts(tunnel, faults, plan.machineIds(), plan.machines());
        rounds = plan.rounds();
        nextRoundS = rounds.firstS();
        truth = new Truth(tunnel, contacts, weather);
        showWeather(0);
        happen();
    }

    /** Asks a machine's contact to close or open now. */
    public void contact(int machine, boolean closed) {
        contact(machine, closed, 0);
    }

    /**
     * Asks a machine's contact to close or open after a while. The opposite of it, if asked before and not done, it does now; the same is
     * not delayed.
     */
    public void contact(int machine, boolean closed, double delayS) {
        contacts.ask(machine, closed, elapsedS + delayS);
        if (delayS <= 0) {
            contacts.move(elapsedS);
        }
    }

    /** Makes the heater an ideal one that gives any power while mains reach it, and lets it give this, W; see {@code sim.bound}. */
    public void heat(double powerW) {
        tunnel.heater().modulate(powerW);
    }

    /** Moves to a time, not backwards. */
    public void advanceTo(double untilS) {
        while (elapsedS < untilS) {
            double changeS = Math.min(nextRoundS, Math.min(faults.nextChangeS(), contacts.nextDueS()));
            double nextS = Math.min(Math.min(untilS, changeS), elapsedS + WEATHER_S);
            if (nextS > elapsedS) {
                showWeather((elapsedS + nextS) / 2);
                tunnel.advance(nextS - elapsedS);
                elapsedS = nextS;
            }
            if (elapsedS >= changeS) {
                happen();
            }
        }
    }

    private void happen() {
        if (faults.advanceTo(elapsedS)) {
            applyFaults();
        }
        if (elapsedS >= contacts.nextDueS()) {
            contacts.move(elapsedS);
        }
        if (elapsedS >= nextRoundS) {
            tunnel.emptyTank();
            nextRoundS += rounds.everyS();
        }
    }

    private void applyFaults() {
        boolean live = !faults.isActive(FaultKind.POWER_CUT) && !faults.isActive(FaultKind.RESIDUAL_CURRENT);
        tunnel.heater().supplied(live && !faults.isActive(FaultKind.HEATER_FUSE));
        tunnel.heater().fanStalled(faults.isActive(FaultKind.HEATER_FAN_STALLED));
        tunnel.dryer().supplied(live);
        tunnel.dryer().tripped(faults.isActive(FaultKind.DRYER_TRIP));
        tunnel.dryer().iced(faults.isActive(FaultKind.DRYER_ICED));
        tunnel.dryer().floatUp(faults.isActive(FaultKind.TANK_FULL));
        tunnel.dryer().humidistatOpen(faults.isActive(FaultKind.HUMIDISTAT_OPEN));
        tunnel.openings().supplied(live);
        tunnel.openings().door(faults.isActive(FaultKind.DOOR_OPEN));
        tunnel.openings().torn(faults.magnitude(FaultKind.COVER_TORN, ""));
        contacts.settle();
    }

    private void showWeather(double atS) {
        weather.moveTo(startEpochS + (long) atS); // whole seconds: half a second of weather is nothing
        tunnel.outside()
                .set(
                        weather.outsideAirC(),
                        weather.humidityKgPerKg(),
                        weather.pressurePa(),
                        weather.windMPerS(),
                        weather.skyC(),
                        weather.globalRadiationWPerM2());
    }

    /** Somebody empties the dryer's tank now. */
    public void emptyTank() {
        tunnel.emptyTank();
    }

    public double elapsedS() {
        return elapsedS;
    }

    /** Whether there is mains for the controller. */
    public boolean isControllerPowered() {
        return !faults.isActive(FaultKind.POWER_CUT);
    }

    /** What is wrong now; only to be read, this world moves it. */
    public FaultClock faults() {
        return faults;
    }

    /** What is so, for checks, reports and simulated sensors. */
    public Truth truth() {
        return truth;
    }
}
