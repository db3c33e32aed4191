package rimeward.core.judgement;

/**
 * How one bench usually differs from all of them together.
 *
 * @param sensor id of the sensor on it
 * @param usualK how much warmer it usually is, K
 */
public record BenchHabit(String sensor, double usualK) {}
