package rimeward.sim.physics;

import java.util.List;

/**
 * A tunnel without its machines.
 *
 * @param cover its panels; the film's holding of water, its convection and its long-wave exchange go by their summed area
 * @param floorM2 ground area, which also takes the sun and faces the cover, 1…5000 m²
 * @param volumeM3 air inside, 1…20000 m³
 * @param quickJPerK heat capacity of what follows the air within minutes, leaves, inner film, hoops and bench frames, 0…1e8 J/K
 * @param massJPerK heat capacity of pots, benches, slab and top soil, 1e4…1e10 J/K
 * @param massAirWPerK between that mass and the air, 1…1e5 W/K
 * @param groundWPerK between that mass and the deep soil, 0…1e4 W/K
 * @param deepSoilC temperature of the deep soil, −10…30 °C
 * @param leakCm2 effective leakage area of the closed tunnel at 4 Pa, 0…50000 cm²
 * @param doorCm2 the same of its open door, in addition
 * @param wetM2 area of moist medium, moist ground and leaves that evaporates, 0…5000 m²
 * @param mediumFullKg water in the growing medium after watering, 0…1e6 kg
 * @param mediumLowKg the grower waters when it has sunk to this, below {@code mediumFullKg}
 * @param runOffToMediumShare share of what runs down the cover that drips into pots; the rest drains away outside, 0…1
 * @param sunToMassShare share of the sunshine inside that warms the mass and not the air, 0…1
 * @param altitudeM above sea level, −400…4000 m
 */
public record TunnelParameters(
        List<Panel> cover,
        double floorM2,
        double volumeM3,
        double quickJPerK,
        double massJPerK,
        double massAirWPerK,
        double groundWPerK,
        double deepSoilC,
        double leakCm2,
        double doorCm2,
        double wetM2,
        double mediumFullKg,
        double mediumLowKg,
        double runOffToMediumShare,
        double sunToMassShare,
        double altitudeM,
        List<BenchParameters> benches) {
    public TunnelParameters {
        cover = List.copyOf(cover);
        benches = List.copyOf(benches);
        Require.that(!cover.isEmpty(), "a tunnel needs at least one panel of cover");
        Require.that(!benches.isEmpty(), "a tunnel needs at least one bench: the floor is held where plants stand");
        Require.within("floorM2", floorM2, 1, 5000);
        Require.within("volumeM3", volumeM3, 1, 20_000);
        Require.within("quickJPerK", quickJPerK, 0, 1e8);
        Require.within("massJPerK", massJPerK, 1e4, 1e10);
        Require.within("massAirWPerK", massAirWPerK, 1, 1e5);
        Require.within("groundWPerK", groundWPerK, 0, 1e4);
        Require.within("deepSoilC", deepSoilC, -10, 30);
        Require.within("leakCm2", leakCm2, 0, 50_000);
        Require.within("doorCm2", doorCm2, 0, 100_000);
        Require.within("wetM2", wetM2, 0, 5000);
        Require.within("mediumFullKg", mediumFullKg, 0, 1e6);
        Require.within("mediumLowKg", mediumLowKg, 0, mediumFullKg);
        Require.within("runOffToMediumShare", runOffToMediumShare, 0, 1);
        Require.within("sunToMassShare", sunToMassShare, 0, 1);
        Require.within("altitudeM", altitudeM, -400, 4000);
    }

    /** Summed area of the cover, m². */
    public double coverM2() {
        double sumM2 = 0;
        for (Panel panel : cover) {
            sumM2 += panel.areaM2();
        }
        return sumM2;
    }

    /** Place of a bench in {@link #benches()}. */
    public int bench(String name) {
        for (int i = 0; i < benches.size(); i++) {
            if (benches.get(i).name().equals(name)) {
                return i;
            }
        }
        throw new IllegalArgumentException("no bench \"" + name + "\"; there are "
                + benches.stream().map(BenchParameters::name).toList());
    }
}
