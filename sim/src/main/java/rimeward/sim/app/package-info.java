/**
 * Command line of the simulator. May import {@code sim.run}, {@code sim.report}, {@code sim.scenario} and {@code sim.check}; imported by
 * none.
 */
@NullMarked
package rimeward.sim.app;

import org.jspecify.annotations.NullMarked;
