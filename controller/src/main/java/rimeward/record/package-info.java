/**
 * What goes into the record and comes back: the saved state, and outcomes as journal rows and CSV. May import {@code core} and
 * its children, {@code alert} and {@code site}.
 */
@NullMarked
package rimeward.record;

import org.jspecify.annotations.NullMarked;
