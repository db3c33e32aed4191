package rimeward.fitting;

/**
 * One switching of a heater's own thermostat.
 *
 * @param on whether it came on
 * @param benchC temperature of the watched bench at that moment, °C
 */
record Turn(boolean on, double atS, double benchC) {}
