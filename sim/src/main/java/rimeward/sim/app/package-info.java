/** Command line of the simulator. May import {@code sim.run} and {@code sim.report}; imported by none. */
package rimeward.sim.app;
