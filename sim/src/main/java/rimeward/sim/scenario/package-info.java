/**
 * Scenario files: which tunnel in which weather, what goes wrong, which laws. May import {@code sim.physics}, {@code sim.weather}, {@code
 * sim.fault}, {@code sim.world}, {@code sim.device}, {@code adapter.config} and {@code site}.
 */
@NullMarked
package rimeward.sim.scenario;

import org.jspecify.annotations.NullMarked;
