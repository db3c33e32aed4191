package rimeward.core.reading;

/**
 * One beat of the control loop.
 *
 * @param number counts from 0 at start
 * @param elapsedMs monotonic time since start, ms; the only time control knows
 * @param wall time of day, for the record
 */
public record Tick(long number, long elapsedMs, WallTime wall) {}
