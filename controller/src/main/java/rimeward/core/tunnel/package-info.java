/**
 * The small thermal model of <em>this</em> tunnel, free-float and capability. May import {@code core.judgement}, {@code
 * air} and {@code site}.
 */
@NullMarked
package rimeward.core.tunnel;

import org.jspecify.annotations.NullMarked;
