/** What must always be true, checked against the simulated truth at every tick. May import {@code sim.world} and {@code site}. */
@NullMarked
package rimeward.sim.check;

import org.jspecify.annotations.NullMarked;
