package rimeward.core.reading;

/**
 * Time of day, for people, tariffs and forecasts; never for control.
 *
 * @param epochMs milliseconds since 1970-01-01T00:00Z
 * @param trusted false until the network has set the clock
 */
public record WallTime(long epochMs, boolean trusted) {
    /** Whole seconds since 1970-01-01T00:00Z. */
    public long epochS() {
        return Math.floorDiv(epochMs, 1000L);
    }
}
