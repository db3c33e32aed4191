package rimeward.sim.sweep;

/** What of a winter is counted, in the order in which it matters to a grower. */
public enum Measured {
    MARGIN("lowest bench above the floor", "K", "marginK", 2),
    BELOW("below the floor", "min", "belowFloorMin", 0),
    GAP("gap", "s", "gapS", 0),
    WET("bench wet", "h", "benchWetH", 1),
    DAMP("above the humidity target", "h", "dampH", 1),
    ELECTRICITY("electricity", "kWh", "kWh", 1),
    STARTS("starts of all relays", "", "starts", 0),
    ALERTS("alerts", "", "alerts", 0);

    private final String label;
    private final String unit;
    private final String key;
    private final int decimals;

    Measured(String label, String unit, String key, int decimals) {
        this.label = label;
        this.unit = unit;
        this.key = key;
        this.decimals = decimals;
    }

    public String label() {
        return label;
    }

    public String unit() {
        return unit;
    }

    /** Name in files, which ends with the unit. */
    public String key() {
        return key;
    }

    public int decimals() {
        return decimals;
    }

    double of(LawLine line) {
        return switch (this) {
            case MARGIN -> line.marginK();
            case BELOW -> line.belowFloorMin();
            case GAP -> line.gapS();
            case WET -> line.benchWetH();
            case DAMP -> line.dampH();
            case ELECTRICITY -> line.kWh();
            case STARTS -> line.starts();
            case ALERTS -> line.alerts();
        };
    }
}
