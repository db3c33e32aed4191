/**
 * Physical truth: one tunnel under one weather with its faults, advanced to a time. Nobody who decides anything may look here;
 * checks and reports may.
 *
 * <p>May import {@code sim.physics}, {@code sim.weather} and {@code sim.fault}.
 */
package rimeward.sim.world;
