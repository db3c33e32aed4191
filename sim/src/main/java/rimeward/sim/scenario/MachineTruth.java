package rimeward.sim.scenario;

import java.util.List;
import java.util.Optional;
import rimeward.adapter.config.Kinds;
import rimeward.adapter.config.TableReader;
import rimeward.sim.physics.Defaults;
import rimeward.sim.physics.DialParameters;
import rimeward.sim.physics.DryerCase;
import rimeward.sim.physics.DryerParameters;
import rimeward.sim.physics.HeaterParameters;
import rimeward.sim.physics.HumidistatParameters;
import rimeward.sim.physics.MachineParameters;
import rimeward.sim.physics.VentFanParameters;
import rimeward.site.DryerKind;
import rimeward.site.Drying;
import rimeward.site.Machine;
import rimeward.site.Site;
import rimeward.site.Venting;

/**
 * Reads what the machines truly are. What is left out is as the settings' plates say; what no plate says is as at Hallin Rigg.
 */
final class MachineTruth {
    private static final HeaterParameters USUAL_HEATER = Defaults.heater();
    private static final DryerParameters.Sorption USUAL_SORPTION = Defaults.sorptionDryer();
    private static final DryerParameters.Compressor USUAL_COMPRESSOR = Defaults.compressorDryer();
    /** Under control the dial is a backstop, turned up out of the way; without, it keeps the floor. Common practice, no source. */
    private static final double USUAL_BY_HAND_C = 9;

    private static final double USUAL_FAN_M3_PER_H = 300; // common practice: an air change in ten minutes

    private final Site plates;

    private MachineTruth(Site plates) {
        this.plates = plates;
    }

    /** The machines with the dial as it is set under control, and as a grower without Rimeward sets it. */
    record Dials(MachineParameters backstop, MachineParameters byHand) {}

    static Optional<Dials> read(TableReader truth, Site plates) {
        MachineTruth reader = new MachineTruth(plates);
        TableReader heaterTable = truth.optionalTable("heater");
        double backstopC =
                heaterTable.celsius("dial_opens", -5, 40, USUAL_HEATER.dial().opensC());
        double byHandC = heaterTable.celsius("dial_opens_by_hand", -5, 40, USUAL_BY_HAND_C);
        Optional<HeaterParameters> heater = reader.heater(heaterTable);
        Optional<? extends DryerParameters> dryer = reader.dryer(truth.optionalTable("dryer"));
        Optional<VentFanParameters> fan = reader.fan(truth.optionalTable("vent_fan"));
        return truth.whenSound(() -> {
            DryerParameters dries = dryer.orElseThrow();
            HeaterParameters heats = heater.orElseThrow();
            return new Dials(
                    new MachineParameters(dialled(heats, backstopC), dries, fan.orElseThrow()),
                    new MachineParameters(dialled(heats, byHandC), dries, fan.orElseThrow()));
        });
    }

    private static HeaterParameters dialled(HeaterParameters heater, double opensC) {
        DialParameters dial = heater.dial();
        return new HeaterParameters(
                heater.stagesW(),
                heater.elementJPerK(),
                heater.blownWPerK(),
                heater.stillWPerK(),
                new DialParameters(opensC, dial.differentialK(), dial.lagS()),
                heater.cutOutC(),
                heater.cutOutResetC());
    }

    private Optional<HeaterParameters> heater(TableReader table) {
        List<Double> plateW =
                plates.heater().stages().stream().map(Machine::ratedW).toList();
        List<Double> stagesW = table.has("stages_W") ? table.list("stages_W", Kinds.number(10, 20_000)) : plateW;
        if (table.isSound() && stagesW.size() != plateW.size()) {
            table.fault(
                    "stages_W",
                    "names " + stagesW.size() + " stages, the settings " + plateW.size(),
                    "give one power for each stage of the settings");
        }
        DialParameters usual = USUAL_HEATER.dial();
        double differentialK = table.get("dial_differential_K", Kinds.number(0.1, 10), usual.differentialK());
        double lagS = table.get("dial_lag_s", Kinds.number(1, 3600), usual.lagS());
        double size = sumW(stagesW) / sumW(USUAL_HEATER.stagesW()); // a stronger heater has more element and more fan
        double elementJPerK = table.get("element_J_per_K", Kinds.number(50, 1e5), size * USUAL_HEATER.elementJPerK());
        double blown = table.get("blown_W_per_K", Kinds.number(1, 500), size * USUAL_HEATER.blownWPerK());
        double still = table.get("still_W_per_K", Kinds.number(0.1, 500), size * USUAL_HEATER.stillWPerK());
        double cutOutC = table.celsius("cut_out", 60, 500, USUAL_HEATER.cutOutC());
        double resetC = table.celsius("cut_out_reset", 30, 499, USUAL_HEATER.cutOutResetC());
        return table.whenSound(() -> new HeaterParameters(
                stagesW,
                elementJPerK,
                blown,
                still,
                new DialParameters(usual.opensC(), differentialK, lagS),
                cutOutC,
                resetC));
    }

    private static double sumW(List<Double> stagesW) {
        double sumW = 0;
        for (double stageW : stagesW) {
            sumW += stageW;
        }
        return sumW;
    }

    private Optional<? extends DryerParameters> dryer(TableReader table) {
        if (!(plates.drying() instanceof Drying.Dryer plate)) {
            return Optional.of(new DryerParameters.None());
        }
        return plate.kind() == DryerKind.SORPTION ? sorption(table, plate) : compressor(table, plate);
    }

    private Optional<DryerParameters.Sorption> sorption(TableReader table, Drying.Dryer plate) {
        Optional<DryerCase> body = body(table, plate, USUAL_SORPTION.body());
        double regeneratorW = table.get(
                "regenerator_W", Kinds.number(50, 5000), plate.machine().ratedW() - plate.fanW());
        double ratedKgPerH = table.get("rated_kg_per_h", Kinds.number(0.01, 20), plate.collectionLPerH());
        double residue = table.get("residue_percent", Kinds.number(0, 50), USUAL_SORPTION.residuePercent());
        double perK = table.get("per_K", Kinds.number(0, 0.05), USUAL_SORPTION.perK());
        double warmRiseK = table.get("warm_rise_K", Kinds.number(1, 100), USUAL_SORPTION.warmRiseK());
        double runOnS = table.get("run_on_s", Kinds.number(0, 1800), plate.runOnS());
        return table.whenSound(() -> new DryerParameters.Sorption(
                body.orElseThrow(), regeneratorW, ratedKgPerH, residue, perK, warmRiseK, runOnS));
    }

    private Optional<DryerParameters.Compressor> compressor(TableReader table, Drying.Dryer plate) {
        Optional<DryerCase> body = body(table, plate, USUAL_COMPRESSOR.body());
        DryerParameters.Compressor usual = USUAL_COMPRESSOR;
        double kgPerDay = table.get("rated_kg_per_day", Kinds.number(1, 500), usual.ratedKgPerDay());
        double kgPerKWh = table.get("rated_kg_per_kWh", Kinds.number(0.3, 5), usual.ratedKgPerKWh());
        double icesBelowC = table.celsius("ices_below", -10, 25, usual.icesBelowC());
        double iceLimitKg = table.get("ice_limit_kg", Kinds.number(0.05, 20), usual.iceLimitKg());
        double defrostS = table.get("defrost_s", Kinds.number(30, 7200), usual.defrostS());
        double defrostW = table.get("defrost_W", Kinds.number(0, 5000), usual.defrostW());
        double restS = table.get("rest_s", Kinds.number(0, 1800), usual.restS());
        return table.whenSound(() -> new DryerParameters.Compressor(
                body.orElseThrow(), kgPerDay, kgPerKWh, icesBelowC, iceLimitKg, defrostS, defrostW, restS));
    }

    private static Optional<DryerCase> body(TableReader table, Drying.Dryer plate, DryerCase usual) {
        HumidistatParameters dial = usual.humidistat();
        double satisfied = table.get("humidistat_percent", Kinds.number(0, 95), dial.satisfiedPercent());
        double differential =
                table.get("humidistat_differential_percent", Kinds.number(0.5, 40), dial.differentialPercent());
        double restS = table.get("humidistat_rest_s", Kinds.number(0, 7200), dial.restS());
        double lagS = table.get("humidistat_lag_s", Kinds.number(1, 3600), dial.lagS());
        double fanW = table.get("fan_W", Kinds.number(0, 500), plate.fanW());
        double innerJPerK = table.get("inner_J_per_K", Kinds.number(100, 1e5), usual.innerJPerK());
        double blown = table.get("blown_W_per_K", Kinds.number(1, 500), usual.blownWPerK());
        double still = table.get("still_W_per_K", Kinds.number(0.1, 500), usual.stillWPerK());
        double minimumAirC = table.celsius("minimum_air", -30, 20, plate.minimumAirC());
        return table.whenSound(() -> new DryerCase(
                fanW,
                innerJPerK,
                blown,
                still,
                minimumAirC,
                plate.tankL(),
                new HumidistatParameters(satisfied, differential, restS, lagS)));
    }

    private Optional<VentFanParameters> fan(TableReader table) {
        if (!(plates.venting() instanceof Venting.VentFan plate)) {
            return Optional.of(VentFanParameters.none());
        }
        double airflow = table.get("airflow_m3_per_h", Kinds.number(0, 50_000), USUAL_FAN_M3_PER_H);
        return table.whenSound(
                () -> new VentFanParameters(airflow, plate.machine().ratedW()));
    }
}
