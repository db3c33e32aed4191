/**
 * Whether commanded machines have their effect: is heat arriving, is water being taken, is a relay welded. May import
 * {@code core.judgement}, {@code core.reading}, {@code core.tunnel}, {@code air} and {@code site}.
 */
@NullMarked
package rimeward.core.watch;

import org.jspecify.annotations.NullMarked;
