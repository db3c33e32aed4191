package rimeward.sizing;

/**
 * What one measure by itself would do.
 *
 * @param amount how much is bought, m² or m
 * @param cost of the material, money
 * @param after what the tunnel would lose then
 * @param heater what it would need then
 */
public record Saving(Measure measure, double amount, double cost, Loss after, HeaterPlan heater, Gain gain) {}
