package rimeward.sim.run;

/**
 * What one machine did in one run.
 *
 * @param machineId its name
 * @param starts how often its relay closed
 * @param closedS how long its relay was closed, s
 * @param longestOffS longest time between opening and closing again, s; 0 if it never closed again
 * @param energyKWh what it used by the simulated meter, kWh
 */
public record MachineUse(String machineId, int starts, long closedS, long longestOffS, double energyKWh) {}
