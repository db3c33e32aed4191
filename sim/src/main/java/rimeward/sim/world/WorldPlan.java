package rimeward.sim.world;

import java.util.List;
import rimeward.sim.fault.FaultPlan;
import rimeward.sim.physics.DryerParameters;
import rimeward.sim.physics.MachineParameters;
import rimeward.sim.physics.StartState;
import rimeward.sim.physics.TunnelParameters;
import rimeward.sim.weather.WeatherSeries;

/**
 * All that makes a world.
 *
 * @param machineIds ids of the relays: the heater's stages, then the dryer if there is one, then the vent fan if there is one
 * @param startEpochS when elapsed time is 0
 */
public record WorldPlan(
        TunnelParameters tunnel,
        MachineParameters machines,
        List<String> machineIds,
        StartState start,
        WeatherSeries weather,
        long startEpochS,
        FaultPlan faults,
        GrowerRounds rounds) {
    public WorldPlan {
        machineIds = List.copyOf(machineIds);
        int machineCount = machines.heater().stagesW().size()
                + (machines.dryer() instanceof DryerParameters.None ? 0 : 1)
                + (machines.ventFan().isFitted() ? 1 : 0);
        if (machineIds.size() != machineCount) {
            throw new IllegalArgumentException(
                    machineCount + " machines stand in the tunnel, but the ids are " + machineIds);
        }
        if (startEpochS < weather.startEpochS() || startEpochS > weather.endEpochS()) {
            throw new IllegalArgumentException("the world begins at epoch second " + startEpochS
                    + ", the weather runs from " + weather.startEpochS() + " to " + weather.endEpochS());
        }
    }
}
