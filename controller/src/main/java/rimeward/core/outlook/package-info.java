/** Forecast, tonight's plan, frost risk. May import {@code core.tunnel}, {@code core.judgement}, {@code air} and {@code site}. */
@NullMarked
package rimeward.core.outlook;

import org.jspecify.annotations.NullMarked;
