/**
 * Rival laws to compare with: what a grower has without Rimeward, which runs without the guard, and our own law with one choice fixed.
 * May import {@code core.decision},
 * {@code core.judgement}, {@code core.outlook} and {@code site}.
 */
@NullMarked
package rimeward.sim.law;

import org.jspecify.annotations.NullMarked;
