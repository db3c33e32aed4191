/**
 * Seeded random winters by the thousand, each held against the properties and beside the rivals: made, run, shrunk where one fails, and
 * counted. May import {@code sim.physics}, {@code sim.weather}, {@code sim.fault}, {@code sim.world}, {@code sim.device}, {@code
 * sim.scenario}, {@code sim.check}, {@code sim.run}, {@code adapter.journal}, {@code port}, {@code alert}, {@code core.*}, {@code
 * json}, {@code air} and {@code site}.
 */
@NullMarked
package rimeward.sim.sweep;

import org.jspecify.annotations.NullMarked;
