package rimeward.sim.physics;

/** The ways water moves. */
public enum WaterPath {
    /** In with outside air, net. */
    LEAKAGE(true),
    /** In by the grower's can. */
    WATERING(true),
    /** In, as a negative number: down the cover and away. */
    RUN_OFF(true),
    /** In, as a negative number: the tank, emptied. */
    EMPTYING(true),
    /** From medium and leaves to the air. */
    EVAPORATION(false),
    /** From the air to the film. */
    CONDENSATION(false),
    /** From the air to the dryer. */
    COLLECTION(false);

    private final boolean acrossBoundary;

    WaterPath(boolean acrossBoundary) {
        this.acrossBoundary = acrossBoundary;
    }

    /** Whether it changes what the tunnel holds, and not only where. */
    public boolean isAcrossBoundary() {
        return acrossBoundary;
    }
}
