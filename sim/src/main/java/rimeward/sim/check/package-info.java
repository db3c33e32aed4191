/**
 * What must always be true, checked against the simulated truth at every tick, whatever the controller believes. May import {@code
 * core.decision}, {@code core.judgement} (for the reasons that P8 looks at) and {@code site}.
 */
@NullMarked
package rimeward.sim.check;

import org.jspecify.annotations.NullMarked;
