/**
 * The least electricity, and the least money, on which perfect foresight could have kept what a law kept: the same floor, the same
 * dryness, the same weather, tunnel, machines and faults. Found by sequential linear programming over the simulator's own responses,
 * and played back into the simulator. No law is judged here by anything but the truth.
 *
 * <p>May import {@code sim.physics}, {@code sim.weather}, {@code sim.fault}, {@code sim.world}, {@code sim.scenario}, {@code sim.run},
 * {@code air} and {@code site}.
 */
package rimeward.sim.bound;
