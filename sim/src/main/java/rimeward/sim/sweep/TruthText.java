package rimeward.sim.sweep;

import java.util.Locale;
import rimeward.sim.device.SensorVices;
import rimeward.sim.physics.BenchParameters;
import rimeward.sim.physics.DryerCase;
import rimeward.sim.physics.DryerParameters;
import rimeward.sim.physics.HeaterParameters;
import rimeward.sim.physics.Panel;
import rimeward.sim.physics.TunnelParameters;
import rimeward.sim.scenario.Scenario;

/** The part of a scenario file that says what things truly are. */
final class TruthText {
    private final Scenario scenario;
    private final Toml to;

    TruthText(Scenario scenario, Toml to) {
        this.scenario = scenario;
        this.to = to;
    }

    void write() {
        to.table("truth").yesNo("door_contact", scenario.doorContact());
        tunnel(scenario.tunnel());
        to.table("truth.start")
                .real("air_C", scenario.start().airC())
                .real("mass_C", scenario.start().massC())
                .real("rh_percent", scenario.start().rhPercent())
                .real("medium_water_kg", scenario.start().mediumWaterKg())
                .real("tank_kg", scenario.start().tankKg());
        heater(scenario.machines().heater());
        dryer(scenario.machines().dryer());
        if (scenario.machines().ventFan().isFitted()) {
            to.table("truth.vent_fan")
                    .real("airflow_m3_per_h", scenario.machines().ventFan().airflowM3PerH());
        }
        for (int i = 0; i < scenario.sensors().size(); i++) {
            sensor(scenario.site().sensors().get(i).id(), scenario.sensors().get(i));
        }
    }

    private void tunnel(TunnelParameters is) {
        to.table("truth.tunnel")
                .real("floor_m2", is.floorM2())
                .real("volume_m3", is.volumeM3())
                .real("quick_J_per_K", is.quickJPerK())
                .real("mass_J_per_K", is.massJPerK())
                .real("mass_air_W_per_K", is.massAirWPerK())
                .real("ground_W_per_K", is.groundWPerK())
                .real("deep_soil_C", is.deepSoilC())
                .real("leak_cm2", is.leakCm2())
                .real("door_cm2", is.doorCm2())
                .real("wet_m2", is.wetM2())
                .real("medium_full_kg", is.mediumFullKg())
                .real("medium_low_kg", is.mediumLowKg())
                .real("run_off_to_medium_share", is.runOffToMediumShare())
                .real("sun_to_mass_share", is.sunToMassShare())
                .real("altitude_m", is.altitudeM());
        for (Panel panel : is.cover()) {
            to.element("truth.cover")
                    .text("kind", panel.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'));
            to.real("area_m2", panel.areaM2());
        }
        for (BenchParameters bench : is.benches()) {
            to.element("truth.bench")
                    .text("name", bench.name())
                    .real("offset_K", bench.offsetK())
                    .real("lift_share", bench.liftShare());
        }
    }

    private void heater(HeaterParameters is) {
        to.table("truth.heater")
                .reals("stages_W", is.stagesW())
                .real("element_J_per_K", is.elementJPerK())
                .real("blown_W_per_K", is.blownWPerK())
                .real("still_W_per_K", is.stillWPerK())
                .real("dial_opens_C", is.dial().opensC())
                .real(
                        "dial_opens_by_hand_C",
                        scenario.machinesByHand().heater().dial().opensC())
                .real("dial_differential_K", is.dial().differentialK())
                .real("dial_lag_s", is.dial().lagS())
                .real("cut_out_C", is.cutOutC())
                .real("cut_out_reset_C", is.cutOutResetC());
    }

    private void dryer(DryerParameters dryer) {
        if (dryer instanceof DryerParameters.Sorption is) {
            body(is.body());
            to.real("regenerator_W", is.regeneratorW())
                    .real("rated_kg_per_h", is.ratedKgPerH())
                    .real("residue_percent", is.residuePercent())
                    .real("per_K", is.perK())
                    .real("warm_rise_K", is.warmRiseK())
                    .real("run_on_s", is.runOnS());
        } else if (dryer instanceof DryerParameters.Compressor is) {
            body(is.body());
            to.real("rated_kg_per_day", is.ratedKgPerDay())
                    .real("rated_kg_per_kWh", is.ratedKgPerKWh())
                    .real("ices_below_C", is.icesBelowC())
                    .real("ice_limit_kg", is.iceLimitKg())
                    .real("defrost_s", is.defrostS())
                    .real("defrost_W", is.defrostW())
                    .real("rest_s", is.restS());
        }
    }

    private void body(DryerCase is) {
        to.table("truth.dryer")
                .real("fan_W", is.fanW())
                .real("inner_J_per_K", is.innerJPerK())
                .real("blown_W_per_K", is.blownWPerK())
                .real("still_W_per_K", is.stillWPerK())
                .real("minimum_air_C", is.minimumAirC())
                .real("humidistat_percent", is.humidistat().satisfiedPercent())
                .real("humidistat_differential_percent", is.humidistat().differentialPercent())
                .real("humidistat_rest_s", is.humidistat().restS())
                .real("humidistat_lag_s", is.humidistat().lagS());
    }

    private void sensor(String id, SensorVices is) {
        to.element("truth.sensor")
                .text("of", id)
                .real("lag_s", is.lagS())
                .real("offset_K", is.offsetK())
                .real("noise_K", is.noiseK())
                .real("resolution_K", is.resolutionK())
                .real("drift_K_per_day", is.driftKPerDay())
                .real("offset_percent", is.offsetPercent())
                .real("noise_percent", is.noisePercent())
                .real("resolution_percent", is.resolutionPercent());
    }
}
