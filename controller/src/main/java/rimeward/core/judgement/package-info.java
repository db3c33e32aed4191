/**
 * How far each reading is believed; coldest, wettest, slope, trust. May import {@code core.reading}, {@code air} and {@code
 * site}.
 */
@NullMarked
package rimeward.core.judgement;

import org.jspecify.annotations.NullMarked;
