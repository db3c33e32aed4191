package rimeward.sim.device;

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

/** A site that fits the steady world: a humid sensor on the north bench, one outside, and meters on all but the second stage. */
final class DeviceSite {
    static final int BENCH = 0;
    static final int OUTSIDE = 1;

    private DeviceSite() {}

    static final Site SITE = new Site(
            "hallin-rigg",
            "Hallin Rigg",
            List.of(new Plant("citrus", 4)),
            new Targets(0.6, 1, 25, 75, 10, 1.5, -2),
            new Tunnel(24, 50, 310, 85, 300_000, 900_000, 120, 0.35),
            List.of(
                    new Sensor("north", new Place.Bench("north bench"), true, 0.3, 3, SensorLimits.defaults()),
                    new Sensor("outside", new Place.Outside(), true, 0.3, 3, SensorLimits.defaults())),
            new Heater(
                    List.of(
                            machine("stage-1", Role.HEATER_STAGE, 1000, true),
                            machine("stage-2", Role.HEATER_STAGE, 1000, false)),
                    60),
            new Drying.Dryer(machine("dryer", Role.DRYER, 600, true), DryerKind.SORPTION, 40, 120, 1, 0.4, 5, true),
            new Venting.VentFan(machine("fan", Role.VENT_FAN, 40, true)),
            new Circuit(230, 20, 0.8, 0, 10),
            new Tariff.Flat("€", 0.3));

    private static Machine machine(String id, Role role, double ratedW, boolean metered) {
        return new Machine(id, role, ratedW, 60, 60, 20, metered, new Wiring.NotWired());
    }
}
