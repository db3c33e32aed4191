/**
 * Simulated sensors, relays and meters, with their own vices. May import the controller's {@code port}, {@code core.reading},
 * {@code core.guard} and {@code site}; {@code air}; {@code sim.world} and {@code sim.fault}.
 */
@NullMarked
package rimeward.sim.device;

import org.jspecify.annotations.NullMarked;
