/**
 * What we would like and why; {@link rimeward.core.decision.ControlLaw} is the door for other people's logic. May import
 * {@code core.judgement}, {@code core.tunnel}, {@code core.watch}, {@code core.outlook}, {@code air} and {@code site}.
 */
@NullMarked
package rimeward.core.decision;

import org.jspecify.annotations.NullMarked;
