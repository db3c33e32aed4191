package rimeward.adapter.config;

import java.nio.file.Path;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rimeward.site.Circuit;
import rimeward.site.Contact;
import rimeward.site.Degrees;
import rimeward.site.Forecasting;
import rimeward.site.Messaging;
import rimeward.site.Page;
import rimeward.site.Plant;
import rimeward.site.Sensor;
import rimeward.site.Site;
import rimeward.site.Targets;
import rimeward.site.Tariff;
import rimeward.site.Tunnel;

/** Reads {@code tunnel.toml} into a {@link Site}. {@code config/tunnel.toml} is the documented example of every key. */
public final class SiteSettings {
    private SiteSettings() {}

    /**
     * Reads a file.
     *
     * @throws BadSettings with everything that is wrong with it
     */
    public static Site read(Path file) {
        return read(TomlTree.read(file));
    }

    /**
     * Reads a tree, say a file's with a scenario's {@code [settings]} laid over it.
     *
     * @throws BadSettings with everything that is wrong with it
     */
    public static Site read(TomlTree tree) {
        Faults faults = new Faults();
        Optional<Site> site = read(tree, faults);
        faults.throwIfAny();
        return site.orElseThrow();
    }

    /** Reads a tree beside other files whose faults are to be told together; empty where there are faults. */
    public static Optional<Site> read(TomlTree tree, Faults faults) {
        TableReader top = faults.reader(tree);
        TableReader name = top.table("site");
        String id = name.get("id", Kinds.id());
        String called = name.get("name", Kinds.text());
        ZoneId zone = name.get("zone", Kinds.zone(), ZoneOffset.UTC);
        Degrees degrees = name.get("tell_degrees", Kinds.word(Degrees.class), Degrees.CELSIUS);
        Optional<List<Plant>> plants = plants(top);
        TableReader targetsTable = top.table("targets");
        Optional<Targets> targets = targets(targetsTable);
        Optional<Tunnel> tunnel = tunnel(top.table("tunnel"));
        Optional<List<Sensor>> sensors = SensorSettings.read(top);
        Optional<Circuit> circuit = circuit(top.table("circuit"));
        LineUse lines = new LineUse();
        MachineSettings machines = MachineSettings.read(top, circuit, lines);
        Contact door = door(top);
        lines.contact(top, "door", door);
        Messaging messaging = MqttSettings.read(top);
        Forecasting forecasting = ForecastSettings.read(top);
        Page page = PageSettings.read(top);
        Optional<Tariff> tariff = TariffSettings.read(top.table("tariff"));
        plants.ifPresent(some -> targets.ifPresent(band -> hotAboveFloorBand(targetsTable, some, band)));
        return top.whenSound(() -> new Site(
                        id,
                        called,
                        zone,
                        plants.orElseThrow(),
                        targets.orElseThrow(),
                        tunnel.orElseThrow(),
                        sensors.orElseThrow(),
                        machines.heater().orElseThrow(),
                        machines.drying().orElseThrow(),
                        machines.venting().orElseThrow(),
                        circuit.orElseThrow(),
                        tariff.orElseThrow(),
                        door,
                        messaging)
                .withDegrees(degrees)
                .with(forecasting)
                .with(page));
    }

    private static Contact door(TableReader top) {
        return top.findTable("door")
                .flatMap(table -> InputTable.read(table, "the door is open"))
                .<Contact>map(Contact.OnLine::new)
                .orElse(new Contact.NotFitted());
    }

    private static Optional<List<Plant>> plants(TableReader top) {
        List<Plant> plants = new ArrayList<>();
        for (TableReader table : top.someTables("plant", "the floor is the highest of the plants' minimums")) {
            String name = table.get("name", Kinds.text());
            double minimumC = table.celsius("minimum", -10, Plant.HIGHEST_MINIMUM_C);
            table.whenSound(() -> new Plant(name, minimumC)).ifPresent(plants::add);
        }
        return plants.isEmpty() ? Optional.empty() : Optional.of(plants);
    }

    private static Optional<Targets> targets(TableReader table) {
        double guardMarginK = table.get("guard_margin_K", Kinds.number(0.2, 5));
        double differentialK = table.get("differential_K", Kinds.number(0.3, 5));
        double hotC = table.celsius("hot", 10, 45);
        double rhPercent = table.get("rh_percent", Kinds.number(40, 95));
        double rhDifferentialPercent = table.get("rh_differential_percent", Kinds.number(2, 30));
        double benchDewSpreadK = table.get("bench_dew_spread_K", Kinds.number(0, 10));
        double filmDewSpreadK = table.get("film_dew_spread_K", Kinds.number(-20, 10));
        if (table.isSound() && rhPercent + rhDifferentialPercent / 2 > 99) {
            table.fault(
                    "rh_percent",
                    "makes the dryer come on at " + Shown.number(rhPercent + rhDifferentialPercent / 2)
                            + " % only, rh_percent + half of rh_differential_percent",
                    "keep that at 99 or below");
        }
        return table.whenSound(() -> new Targets(
                guardMarginK, differentialK, hotC, rhPercent, rhDifferentialPercent, benchDewSpreadK, filmDewSpreadK));
    }

    /** The hot limit must leave the floor band room, or the two would fight. */
    private static void hotAboveFloorBand(TableReader table, List<Plant> plants, Targets targets) {
        Plant tenderest =
                plants.stream().max(Comparator.comparingDouble(Plant::minimumC)).orElseThrow();
        double bandEndC = targets.bandEndC(tenderest.minimumC());
        if (!targets.leavesRoomAbove(tenderest.minimumC())) {
            table.fault(
                    table.has("hot_F") ? "hot_F" : "hot_C",
                    "leaves no room above the floor band: floor " + Shown.number(tenderest.minimumC()) + " °C ("
                            + tenderest.name() + ") + guard_margin_K + differential_K ends at "
                            + Shown.number(bandEndC) + " °C",
                    "raise it to at least " + Shown.number(bandEndC + Targets.HOT_CLEAR_K) + " °C, or lower the band");
        }
    }

    private static Optional<Tunnel> tunnel(TableReader table) {
        double floorAreaM2 = table.get("floor_area_m2", Kinds.number(1, 2000));
        double volumeM3 = table.get("volume_m3", Kinds.number(1, 10_000));
        double altitudeM = table.get("altitude_m", Kinds.number(-430, 4500));
        double heatLossWPerK = table.get("heat_loss_W_per_K", Kinds.number(5, 50_000));
        double airCapacityJPerK = table.get("air_capacity_J_per_K", Kinds.number(1e3, 1e9));
        double massCapacityJPerK = table.get("mass_capacity_J_per_K", Kinds.number(1e4, 1e11));
        double massCouplingWPerK = table.get("mass_coupling_W_per_K", Kinds.number(1, 100_000));
        double filmFraction = table.get("film_fraction", Kinds.number(0, 1));
        return table.whenSound(() -> new Tunnel(
                floorAreaM2,
                volumeM3,
                altitudeM,
                heatLossWPerK,
                airCapacityJPerK,
                massCapacityJPerK,
                massCouplingWPerK,
                filmFraction));
    }

    private static Optional<Circuit> circuit(TableReader table) {
        double voltageV = table.get("voltage_V", Kinds.number(100, 480));
        double fuseA = table.get("fuse_A", Kinds.number(1, 125));
        double continuousFactor = table.get("continuous_factor", Kinds.number(0.5, 1));
        double otherLoadW = table.get("other_load_W", Kinds.number(0, 20_000));
        double staggerS = table.get("stagger_s", Kinds.number(0, 300));
        double carriesW = voltageV * fuseA * continuousFactor;
        if (table.isSound() && otherLoadW >= carriesW) {
            table.fault(
                    "other_load_W",
                    "leaves nothing of the " + Shown.number(carriesW) + " W that the circuit carries for hours on end",
                    "move that load, or have a stronger circuit put in");
        }
        return table.whenSound(() -> new Circuit(voltageV, fuseA, continuousFactor, otherLoadW, staggerS));
    }
}
