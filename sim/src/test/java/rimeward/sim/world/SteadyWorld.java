package rimeward.sim.world;

import java.util.List;
import rimeward.sim.fault.Fault;
import rimeward.sim.fault.FaultPlan;
import rimeward.sim.physics.Defaults;
import rimeward.sim.physics.DialParameters;
import rimeward.sim.physics.MachineParameters;
import rimeward.sim.physics.StartState;
import rimeward.sim.physics.VentFanParameters;
import rimeward.sim.weather.WeatherSample;
import rimeward.sim.weather.WeatherSeries;

/** Worlds under weather that never changes: −2 °C, 4.5 hPa, 2 m/s. Two heater stages of 1 kW, a sorption dryer, a vent fan. */
public final class SteadyWorld {
    public static final int STAGE_1 = 0;
    public static final int STAGE_2 = 1;
    public static final int DRYER = 2;
    public static final int FAN = 3;
    public static final double OUTSIDE_C = -2;

    private static final long START_EPOCH_S = 1_700_000_000L;

    private SteadyWorld() {}

    public static World with(Fault... faults) {
        return new World(
                plan(GrowerRounds.none(), FaultPlan.of(faults), List.of("stage-1", "stage-2", "dryer", "fan")));
    }

    static WorldPlan plan(GrowerRounds rounds, FaultPlan faults, List<String> machineIds) {
        WeatherSample always = new WeatherSample(OUTSIDE_C, 450, 2, 97_600, 0.5, 0, -10);
        return new WorldPlan(
                Defaults.tunnel(),
                new MachineParameters(
                        Defaults.heater(List.of(1000.0, 1000.0), new DialParameters(30, 2, 180)),
                        Defaults.sorptionDryer(),
                        new VentFanParameters(300, 40)),
                machineIds,
                new StartState(8, 9, 85, 140, 1),
                WeatherSeries.constant(START_EPOCH_S, 10 * 86_400, always),
                START_EPOCH_S,
                faults,
                rounds);
    }
}
