package rimeward.sim.report;

import java.util.List;
import rimeward.site.Circuit;
import rimeward.site.DryerKind;
import rimeward.site.Drying;
import rimeward.site.Heater;
import rimeward.site.Machine;
import rimeward.site.Place;
import rimeward.site.Plant;
import rimeward.site.Role;
import rimeward.site.Sensor;
import rimeward.site.SensorLimits;
import rimeward.site.Site;
import rimeward.site.Targets;
import rimeward.site.Tariff;
import rimeward.site.Tunnel;
import rimeward.site.Venting;
import rimeward.site.Wiring;

/** A made-up tunnel with two heater stages and a dryer. */
final class ToySite {
    static final int MACHINES = 3;

    private ToySite() {}

    static Site of() {
        return named("Hallin Rigg");
    }

    static Site named(String name) {
        Heater heater = new Heater(
                List.of(machine("heater-1", Role.HEATER_STAGE, 1000), machine("heater-2", Role.HEATER_STAGE, 1000)),
                60);
        Drying dryer =
                new Drying.Dryer(machine("dryer", Role.DRYER, 600), DryerKind.SORPTION, 40, 120, 1, 0.4, 8, true);
        return new Site(
                "hallin-rigg",
                name,
                List.of(new Plant("citrus", 4)),
                new Targets(0.6, 1, 25, 75, 10, 1.5, -2),
                new Tunnel(24, 50, 310, 85, 300_000, 900_000, 120, 0.35),
                List.of(new Sensor(
                        "cold-corner", new Place.Bench("cold-corner"), true, 0.3, 3, SensorLimits.defaults())),
                heater,
                dryer,
                new Venting.NoVentFan(),
                new Circuit(230, 16, 0.8, 0, 10),
                new Tariff.Flat("€", 0.3));
    }

    private static Machine machine(String id, Role role, double ratedW) {
        return new Machine(id, role, ratedW, 60, 60, 20, true, new Wiring.NotWired());
    }
}
