/**
 * What people read after a replay or a sweep: the terminal's table, the page, the still picture. Pure: the same comparison gives the same
 * text. May import {@code sim.run}, {@code sim.sweep}, {@code sim.check}, {@code core.guard}, {@code alert} and {@code site} for what their records say, and {@code strip}
 * to draw.
 */
@NullMarked
package rimeward.sim.report;

import org.jspecify.annotations.NullMarked;
