/** JSON that strangers wrote, read strictly and within bounds. May import nothing of ours. */
@NullMarked
package rimeward.json;

import org.jspecify.annotations.NullMarked;
