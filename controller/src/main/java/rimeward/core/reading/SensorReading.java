package rimeward.core.reading;

/**
 * What one sensor said at one tick.
 *
 * @param airC air temperature, °C
 * @param rhPercent relative humidity over water, %
 */
public record SensorReading(Reading airC, Reading rhPercent) {}
