package rimeward.adapter.forecast;

import java.util.Optional;
import rimeward.core.outlook.Forecast;

/** Where forecasts come from, without a clock of its own: whoever calls hands the time in, so that hours of outage are tried in a moment. */
interface Source {
    /** When it may be looked for, at the earliest and where nobody asks; ms of monotonic time. */
    record Due(long earliestMs, long usualMs) {}

    /** Its name for people. */
    String name();

    /** When to look first. */
    Due first(long nowMs);

    /** Looks for a newer one, and says when to look again. Takes its time, a bounded one. For one thread. */
    Due attempt(long nowMs);

    /** From any thread; never blocks. */
    Optional<Forecast> newest();

    /** From any thread; never blocks. */
    Optional<String> trouble();
}
