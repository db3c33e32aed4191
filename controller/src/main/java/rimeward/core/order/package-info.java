/** What the grower may ask for, and what is answered. May import {@code core.outlook}. */
@NullMarked
package rimeward.core.order;

import org.jspecify.annotations.NullMarked;
