package rimeward.site;

/** What a switched machine is there for. */
public enum Role {
    HEATER_STAGE(true),
    DRYER(true),
    VENT_FAN(false);

    private final boolean heatSource;

    Role(boolean heatSource) {
        this.heatSource = heatSource;
    }

    /** Whether running it warms the air. */
    public boolean isHeatSource() {
        return heatSource;
    }
}
