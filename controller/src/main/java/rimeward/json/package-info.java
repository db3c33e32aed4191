/** JSON: what strangers wrote, read strictly and within bounds, and what we say. May import nothing of ours. */
@NullMarked
package rimeward.json;

import org.jspecify.annotations.NullMarked;
