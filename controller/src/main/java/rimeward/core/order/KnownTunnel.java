package rimeward.core.order;

/** The tunnel that control goes by: as the settings assume it, or as its nights taught. */
public sealed interface KnownTunnel {
    /** Nothing was learned yet, or the settings were changed since. */
    record AsInSettings() implements KnownTunnel {}

    /**
     * What was learned, for as long as the settings' tunnel stays as it was.
     *
     * @param heatLossWPerK heat lost to outside per kelvin of lift, W/K
     * @param airCapacityJPerK heat capacity that moves with the air, J/K
     * @param massCapacityJPerK heat capacity of pots, slab and soil, J/K
     * @param massCouplingWPerK exchange between air and mass, W/K
     * @param nights learned from so many
     * @param settings what the settings said of the tunnel then, as a fingerprint
     */
    record Learned(
            double heatLossWPerK,
            double airCapacityJPerK,
            double massCapacityJPerK,
            double massCouplingWPerK,
            int nights,
            long settings)
            implements KnownTunnel {}

    KnownTunnel AS_IN_SETTINGS = new AsInSettings();
}
