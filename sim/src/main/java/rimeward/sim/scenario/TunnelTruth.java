package rimeward.sim.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rimeward.adapter.config.Kinds;
import rimeward.adapter.config.TableReader;
import rimeward.sim.physics.BenchParameters;
import rimeward.sim.physics.CoverKind;
import rimeward.sim.physics.Defaults;
import rimeward.sim.physics.Panel;
import rimeward.sim.physics.StartState;
import rimeward.sim.physics.TunnelParameters;

/** Reads what the tunnel truly is. Every key may be left out: then it is as at Hallin Rigg. */
final class TunnelTruth {
    private static final TunnelParameters USUAL = Defaults.tunnel();

    private TunnelTruth() {}

    static Optional<TunnelParameters> read(TableReader truth) {
        List<Panel> cover = cover(truth);
        List<BenchParameters> benches = benches(truth);
        TableReader table = truth.optionalTable("tunnel");
        double floorM2 = table.get("floor_m2", Kinds.number(1, 5000), USUAL.floorM2());
        double volumeM3 = table.get("volume_m3", Kinds.number(1, 20_000), USUAL.volumeM3());
        double quickJPerK = table.get("quick_J_per_K", Kinds.number(0, 1e8), USUAL.quickJPerK());
        double massJPerK = table.get("mass_J_per_K", Kinds.number(1e4, 1e10), USUAL.massJPerK());
        double massAirWPerK = table.get("mass_air_W_per_K", Kinds.number(1, 1e5), USUAL.massAirWPerK());
        double groundWPerK = table.get("ground_W_per_K", Kinds.number(0, 1e4), USUAL.groundWPerK());
        double deepSoilC = table.celsius("deep_soil", -10, 30, USUAL.deepSoilC());
        double leakCm2 = table.get("leak_cm2", Kinds.number(0, 50_000), USUAL.leakCm2());
        double doorCm2 = table.get("door_cm2", Kinds.number(0, 100_000), USUAL.doorCm2());
        double wetM2 = table.get("wet_m2", Kinds.number(0, 5000), USUAL.wetM2());
        double fullKg = table.get("medium_full_kg", Kinds.number(0, 1e6), USUAL.mediumFullKg());
        double lowKg = table.get("medium_low_kg", Kinds.number(0, 1e6), Math.min(fullKg, USUAL.mediumLowKg()));
        double runOff = table.get("run_off_to_medium_share", Kinds.number(0, 1), USUAL.runOffToMediumShare());
        double sunToMass = table.get("sun_to_mass_share", Kinds.number(0, 1), USUAL.sunToMassShare());
        double altitudeM = table.get("altitude_m", Kinds.number(-400, 4000), USUAL.altitudeM());
        return truth.whenSound(() -> new TunnelParameters(
                cover,
                floorM2,
                volumeM3,
                quickJPerK,
                massJPerK,
                massAirWPerK,
                groundWPerK,
                deepSoilC,
                leakCm2,
                doorCm2,
                wetM2,
                fullKg,
                lowKg,
                runOff,
                sunToMass,
                altitudeM,
                benches));
    }

    /** How the replay begins. */
    static Optional<StartState> start(TableReader truth) {
        StartState usual = Defaults.evening();
        TableReader table = truth.optionalTable("start");
        double airC = table.celsius("air", -40, 50, usual.airC());
        double massC = table.celsius("mass", -40, 50, usual.massC());
        double rhPercent = table.get("rh_percent", Kinds.number(1, 100), usual.rhPercent());
        double mediumKg = table.get("medium_water_kg", Kinds.number(0, 1e6), usual.mediumWaterKg());
        double tankKg = table.get("tank_kg", Kinds.number(0, 1e4), usual.tankKg());
        return table.whenSound(() -> new StartState(airC, massC, rhPercent, mediumKg, tankKg));
    }

    private static List<Panel> cover(TableReader truth) {
        List<Panel> panels = new ArrayList<>();
        for (TableReader table : truth.tables("cover")) {
            CoverKind kind = table.get("kind", Kinds.word(CoverKind.class));
            double areaM2 = table.get("area_m2", Kinds.number(0.1, 10_000));
            table.whenSound(() -> new Panel(kind, areaM2)).ifPresent(panels::add);
        }
        return panels.isEmpty() ? USUAL.cover() : panels;
    }

    private static List<BenchParameters> benches(TableReader truth) {
        List<BenchParameters> benches = new ArrayList<>();
        for (TableReader table : truth.tables("bench")) {
            String name = table.get("name", Kinds.text());
            double offsetK = table.get("offset_K", Kinds.number(-5, 5));
            double liftShare = table.get("lift_share", Kinds.number(-0.5, 0.5), 0.0);
            table.whenSound(() -> new BenchParameters(name, offsetK, liftShare)).ifPresent(benches::add);
        }
        return benches.isEmpty() ? USUAL.benches() : benches;
    }
}
