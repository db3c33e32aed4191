package rimeward.sim.run;

import rimeward.core.reading.Tick;
import rimeward.core.reading.WallTime;
import rimeward.port.Forecasts;
import rimeward.port.Relays;
import rimeward.port.Sensors;
import rimeward.port.Ticker;
import rimeward.service.Surroundings;
import rimeward.sim.device.SimRelays;
import rimeward.sim.device.SimSensors;
import rimeward.sim.fault.FaultKind;
import rimeward.sim.scenario.Scenario;
import rimeward.sim.world.World;
import rimeward.site.RelaySet;

/**
 * A simulated tunnel for the whole service to stand in, at a pace for people. The ticks end with the scenario, when the pace says so, and
 * where the scenario lets the controller restart: then the service wants to be started again. For one thread.
 */
public final class LiveTunnel implements Surroundings {
    private final World world;
    private final Sensors sensors;
    private final Relays devices;
    private final HourlyForecasts forecasts;
    private final FailState failState;
    private final VirtualTicker ticker;
    private final PacedTicker paced;

    public LiveTunnel(Scenario scenario, Pace pace) {
        world = new World(Replay.plan(scenario, true));
        devices = new SimRelays(world, scenario.seed());
        sensors = new SimSensors(world, scenario.site(), scenario.sensors(), scenario.doorContact(), scenario.seed());
        failState = new FailState(scenario.site(), devices, true);
        ticker = new VirtualTicker(world, new Falling(), scenario.startEpochS(), scenario.lengthS(), scenario.tickS());
        paced = new PacedTicker(ticker, world, pace);
        forecasts = new HourlyForecasts(scenario.weather(), scenario.forecast());
    }

    /** Without a controller the relays fall; nobody takes anything down. */
    private final class Falling implements VirtualTicker.Passing {
        @Override
        public void controllerGone() {
            failState.fall();
        }

        @Override
        public void beginDark() {}

        @Override
        public void end(long lastsS) {}
    }

    /** Whether nothing more is to come, of the scenario or of the pace. */
    public boolean isOver() {
        return ticker.isOver() || paced.isStopped();
    }

    @Override
    public Sensors sensors() {
        return sensors;
    }

    @Override
    public Relays relays() {
        return this::command;
    }

    private void command(RelaySet set) {
        failState.commanded(set);
        devices.close(set);
    }

    @Override
    public Forecasts forecasts() {
        return forecasts;
    }

    @Override
    public WallTime now() {
        return ticker.wall();
    }

    @Override
    public String boot() {
        return "simulated";
    }

    @Override
    public Ticker ticker(long fromElapsedMs) {
        return () -> paced.next().map(tick -> {
            forecasts.note(tick.wall().epochS(), world.faults().isActive(FaultKind.FORECAST_LOST));
            return new Tick(tick.number(), fromElapsedMs + tick.elapsedMs(), tick.wall());
        });
    }

    @Override
    public void letGo() {
        failState.fall();
    }
}
