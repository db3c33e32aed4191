package rimeward.sim.sweep;

import java.util.Locale;
import rimeward.site.Circuit;
import rimeward.site.Drying;
import rimeward.site.Machine;
import rimeward.site.Place;
import rimeward.site.Plant;
import rimeward.site.Sensor;
import rimeward.site.Site;
import rimeward.site.Targets;
import rimeward.site.Tunnel;
import rimeward.site.Venting;

/** A made site as settings that the service reads too. What made sites do not have (lines, zones, brokers, prices
 * that change) is not written. */
final class SettingsText {
    private final Site site;
    private final Toml to = new Toml();

    private SettingsText(Site site) {
        this.site = site;
    }

    static String of(Site site) {
        return new SettingsText(site).write();
    }

    private String write() {
        to.table("site").text("id", site.id()).text("name", site.name());
        for (Plant plant : site.plants()) {
            to.element("plant").text("name", plant.name()).real("minimum_C", plant.minimumC());
        }
        targets(site.targets());
        tunnel(site.tunnel());
        site.sensors().forEach(this::sensor);
        to.table("heater").real("dead_time_s", site.heater().deadTimeS());
        site.heater().stages().forEach(stage -> machine("[heater.stage]", stage));
        if (site.drying() instanceof Drying.Dryer dryer) {
            dryer(dryer);
        }
        if (site.venting() instanceof Venting.VentFan fan) {
            machine("vent_fan", fan.machine());
        }
        circuit(site.circuit());
        to.table("tariff").text("currency", site.tariff().currency());
        to.real("per_kWh", site.tariff().pricePerKWh(0));
        return to.toString();
    }

    private void targets(Targets targets) {
        to.table("targets")
                .real("guard_margin_K", targets.guardMarginK())
                .real("differential_K", targets.differentialK())
                .real("hot_C", targets.hotC())
                .real("rh_percent", targets.rhPercent())
                .real("rh_differential_percent", targets.rhDifferentialPercent())
                .real("bench_dew_spread_K", targets.benchDewSpreadK())
                .real("film_dew_spread_K", targets.filmDewSpreadK());
    }

    private void tunnel(Tunnel tunnel) {
        to.table("tunnel")
                .real("floor_area_m2", tunnel.floorAreaM2())
                .real("volume_m3", tunnel.volumeM3())
                .real("altitude_m", tunnel.altitudeM())
                .real("heat_loss_W_per_K", tunnel.heatLossWPerK())
                .real("air_capacity_J_per_K", tunnel.airCapacityJPerK())
                .real("mass_capacity_J_per_K", tunnel.massCapacityJPerK())
                .real("mass_coupling_W_per_K", tunnel.massCouplingWPerK())
                .real("film_fraction", tunnel.filmFraction());
    }

    private void sensor(Sensor sensor) {
        to.element("sensor").text("id", sensor.id());
        if (sensor.place() instanceof Place.Bench bench) {
            to.text("bench", bench.name());
        } else {
            to.yesNo("outside", true);
        }
        to.yesNo("humidity", sensor.hasHumidity()).real("uncertainty_K", sensor.uncertaintyK());
        if (sensor.hasHumidity()) {
            to.real("uncertainty_percent", sensor.uncertaintyPercent());
        }
    }

    private void machine(String table, Machine machine) {
        to.table(table)
                .text("id", machine.id())
                .real("rated_W", machine.ratedW())
                .real("min_on_s", machine.minOnS())
                .real("min_rest_s", machine.minRestS())
                .whole("max_starts_per_h", machine.maxStartsPerH())
                .yesNo("power_feedback", machine.hasPowerFeedback());
    }

    private void dryer(Drying.Dryer dryer) {
        machine("dryer", dryer.machine());
        to.text("kind", dryer.kind().name().toLowerCase(Locale.ROOT))
                .real("fan_W", dryer.fanW())
                .real("run_on_s", dryer.runOnS())
                .real("minimum_air_C", dryer.minimumAirC())
                .real("collection_L_per_h", dryer.collectionLPerH())
                .real("tank_L", dryer.tankL())
                .yesNo("tank_float", dryer.tankFloat().isFitted());
    }

    private void circuit(Circuit circuit) {
        to.table("circuit")
                .real("voltage_V", circuit.voltageV())
                .real("fuse_A", circuit.fuseA())
                .real("continuous_factor", circuit.continuousFactor())
                .real("other_load_W", circuit.otherLoadW())
                .real("stagger_s", circuit.staggerS());
    }
}
