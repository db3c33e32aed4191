package rimeward.port;

import rimeward.core.outlook.Outlook;
import rimeward.core.reading.Tick;

/** Where forecasts come from. */
public interface ForecastSource {
    /** What is known now; a forecast that {@link Outlook.Night} refuses counts as none. Never blocks and never throws. */
    Outlook latest(Tick now);

    /** Begins to look for a newer one, unless it cannot; whether it can. Never blocks and never throws. */
    default boolean askAnew() {
        return false;
    }
}
