package rimeward.core.order;

/** The floor that the grower asked for, or that none was. */
public sealed interface FloorOrder {
    /** The floor is the settings' own. */
    record AsInSettings() implements FloorOrder {}

    /**
     * Another floor, for as long as the settings that it was asked against stay as they were.
     *
     * @param floorC °C
     * @param settings what the settings said of floor and plants then, as a fingerprint
     */
    record Asked(double floorC, long settings) implements FloorOrder {}

    FloorOrder AS_IN_SETTINGS = new AsInSettings();
}
