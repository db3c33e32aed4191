package rimeward.sim.sweep;

import java.util.function.ToDoubleFunction;

/** What of a winter is counted, in the order in which it matters to a grower. */
public enum Measured {
    MARGIN("lowest bench above the floor", "K", "marginK", 2, LawLine::marginK),
    BELOW("below the floor", "min", "belowFloorMin", 0, LawLine::belowFloorMin),
    GAP("gap", "s", "gapS", 0, LawLine::gapS),
    WET("bench wet", "h", "benchWetH", 1, LawLine::benchWetH),
    DAMP("above the humidity target", "h", "dampH", 1, LawLine::dampH),
    ELECTRICITY("electricity", "kWh", "kWh", 1, LawLine::kWh),
    STARTS("starts of all relays", "", "starts", 0, LawLine::starts),
    ALERTS("alerts", "", "alerts", 0, LawLine::alerts);

    private final String label;
    private final String unit;
    private final String key;
    private final int decimals;
    private final ToDoubleFunction<LawLine> value;

    Measured(String label, String unit, String key, int decimals, ToDoubleFunction<LawLine> value) {
        this.label = label;
        this.unit = unit;
        this.key = key;
        this.decimals = decimals;
        this.value = value;
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
        return value.applyAsDouble(line);
    }
}
