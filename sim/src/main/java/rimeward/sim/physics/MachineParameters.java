package rimeward.sim.physics;

/** What stands in the tunnel and can be switched. */
public record MachineParameters(HeaterParameters heater, DryerParameters dryer, VentFanParameters ventFan) {}
