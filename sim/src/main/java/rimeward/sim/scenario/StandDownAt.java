package rimeward.sim.scenario;

/**
 * The grower takes a machine out of use for service.
 *
 * @param atS when, s since the start
 * @param machineId as the settings call it
 * @param forS how long, s; 0 brings it back
 */
public record StandDownAt(long atS, String machineId, double forS) {}
