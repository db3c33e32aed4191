package rimeward.site;

/**
 * The tunnel as the settings describe it; what the controller assumes until it has learned better.
 *
 * @param floorAreaM2 ground covered, m²
 * @param volumeM3 air enclosed, m³
 * @param altitudeM height above sea level, m
 * @param heatLossWPerK heat lost to outside per kelvin of lift, cover and draughts together, W/K
 * @param airCapacityJPerK heat capacity that moves with the air (air, film, leaves), J/K
 * @param massCapacityJPerK heat capacity of pots, benches, slab and top soil, J/K
 * @param massCouplingWPerK exchange between air and mass, W/K
 * @param filmFraction film temperature as a share of the way from outside (0) to inside (1)
 */
public record Tunnel(
        double floorAreaM2,
        double volumeM3,
        double altitudeM,
        double heatLossWPerK,
        double airCapacityJPerK,
        double massCapacityJPerK,
        double massCouplingWPerK,
        double filmFraction) {
    /** The same ground and air, with other numbers of its warmth. */
    public Tunnel with(
            double otherHeatLossWPerK,
            double otherAirCapacityJPerK,
            double otherMassCapacityJPerK,
            double otherMassCouplingWPerK) {
        return new Tunnel(
                floorAreaM2,
                volumeM3,
                altitudeM,
                otherHeatLossWPerK,
                otherAirCapacityJPerK,
                otherMassCapacityJPerK,
                otherMassCouplingWPerK,
                filmFraction);
    }

    public Tunnel {
        Check.within("floorAreaM2", floorAreaM2, 1, 2000);
        Check.within("volumeM3", volumeM3, 1, 10_000);
        Check.within("altitudeM", altitudeM, -430, 4500);
        Check.within("heatLossWPerK", heatLossWPerK, 5, 50_000);
        Check.within("airCapacityJPerK", airCapacityJPerK, 1e3, 1e9);
        Check.within("massCapacityJPerK", massCapacityJPerK, 1e4, 1e11);
        Check.within("massCouplingWPerK", massCouplingWPerK, 1, 100_000);
        Check.within("filmFraction", filmFraction, 0, 1);
    }
}
