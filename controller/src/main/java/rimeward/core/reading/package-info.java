/** What sensors said, or failed to say. May import {@code site}. */
@NullMarked
package rimeward.core.reading;

import org.jspecify.annotations.NullMarked;
