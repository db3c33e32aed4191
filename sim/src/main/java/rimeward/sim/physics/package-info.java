/**
 * The tunnel and its machines as a few lumps of heat and water: the physical truth that the simulator steps through time.
 *
 * <p>{@link rimeward.sim.physics.Tunnel} is the door. SI units, temperatures in °C. Every flux is booked, see
 * {@link rimeward.sim.physics.HeatLedger} and {@link rimeward.sim.physics.WaterLedger}.
 *
 * <p>May import {@code rimeward.air} and nothing else of ours.
 */
package rimeward.sim.physics;
