/**
 * Trying the hardware by hand before the service does: which relay clicks, and what the marks of a dial mean. May import {@code port},
 * {@code core.reading} and {@code site}.
 */
@NullMarked
package rimeward.fitting;

import org.jspecify.annotations.NullMarked;
