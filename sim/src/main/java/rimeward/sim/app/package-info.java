/**
 * Command line of the simulator. May import {@code sim.run}, {@code sim.bound}, {@code sim.sweep}, {@code sim.report}, {@code sim.scenario}, {@code sim.check}, and for the
 * whole service {@code assembly}, {@code core.*}, {@code alert} and {@code site}; imported by none.
 */
@NullMarked
package rimeward.sim.app;

import org.jspecify.annotations.NullMarked;
