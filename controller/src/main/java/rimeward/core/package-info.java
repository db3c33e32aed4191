/** One tick from start to finish. May import its children and {@code site}. */
@NullMarked
package rimeward.core;

import org.jspecify.annotations.NullMarked;
