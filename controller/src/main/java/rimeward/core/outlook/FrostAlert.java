package rimeward.core.outlook;

/**
 * Whether the grower is warned that the machines may not suffice. Raised at one probability and cleared at a lower one, so that each new
 * forecast does not change it.
 */
public record FrostAlert(boolean stands) {
    /** Own choices, by the bench of the frost alert on winters of their own: fewer misses cost many more false alarms. */
    public static final double RAISED_AT = 0.25;

    public static final double CLEARED_BELOW = 0.1;

    public static final FrostAlert NONE = new FrostAlert(false);

    public FrostAlert after(FrostChance chance) {
        return after(chance.probability());
    }

    /** @param probability that the floor cannot be held, 0 to 1 */
    public FrostAlert after(double probability) {
        return new FrostAlert(probability >= (stands ? CLEARED_BELOW : RAISED_AT));
    }
}
