package rimeward.core.reading;

import java.util.List;

/**
 * Everything sensed at one moment, in the order of the site's lists.
 *
 * @param sensors one for each of the site's sensors
 * @param powersW one for each of the site's machines: what it draws, W
 * @param tankFull the dryer's float
 * @param doorOpen the door contact
 */
public record Senses(List<SensorReading> sensors, List<Reading> powersW, Signal tankFull, Signal doorOpen) {}
