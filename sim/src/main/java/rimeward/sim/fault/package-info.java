/**
 * What goes wrong, and when: named faults at named times, from a scenario or from a seed; and the seeded streams of chance that
 * everything random in the simulator draws from.
 *
 * <p>Imports nothing of ours.
 */
package rimeward.sim.fault;
