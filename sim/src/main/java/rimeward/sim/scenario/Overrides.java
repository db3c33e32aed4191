package rimeward.sim.scenario;

import java.nio.file.Path;
import java.time.LocalDateTime;
import org.jspecify.annotations.Nullable;

/**
 * What the command line says instead of the scenario; null where it says nothing.
 *
 * @param weather a file of recorded weather
 * @param from start, by the scenario's clock
 * @param until end
 * @param seed the luck of sensors, forecast and recipe
 */
public record Overrides(
        @Nullable Path weather,
        @Nullable LocalDateTime from,
        @Nullable LocalDateTime until,
        @Nullable Long seed) {
    public static final Overrides NONE = new Overrides(null, null, null, null);
}
