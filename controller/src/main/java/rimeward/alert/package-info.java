/** Raise, repeat, acknowledge, clear. May import {@code core} and its children, and {@code site}. */
@NullMarked
package rimeward.alert;

import org.jspecify.annotations.NullMarked;
