/**
 * Forecasts from a file or a weather service. Texts become forecasts in pure code ({@link rimeward.adapter.forecast.FileText}, {@link
 * rimeward.adapter.forecast.ServiceText}); a source decides when to look again and knows no clock; {@link
 * rimeward.adapter.forecast.RunningForecasts} gives each a thread. May import {@code port}, {@code core.outlook}, {@code core.reading}, {@code
 * json}, {@code air} and {@code site}.
 */
@NullMarked
package rimeward.adapter.forecast;

import org.jspecify.annotations.NullMarked;
