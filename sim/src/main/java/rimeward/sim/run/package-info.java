/**
 * Runs the same control loop against a simulated tunnel: scenario, virtual ticker, trace, comparison. May import what it puts
 * together: the rest of the simulator (not {@code sim.report} and {@code sim.app}), and of the controller everything but its
 * adapters to hardware, network and database.
 */
@NullMarked
package rimeward.sim.run;

import org.jspecify.annotations.NullMarked;
