/**
 * The last word: what may not be on, and what may not be off (no-gap). May import {@code core.decision}, {@code
 * core.judgement}, {@code core.watch}, {@code core.tunnel} and {@code site}.
 */
@NullMarked
package rimeward.core.guard;

import org.jspecify.annotations.NullMarked;
