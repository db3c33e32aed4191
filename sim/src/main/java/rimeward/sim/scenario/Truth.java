package rimeward.sim.scenario;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import rimeward.adapter.config.Kinds;
import rimeward.adapter.config.TableReader;
import rimeward.sim.device.SensorVices;
import rimeward.sim.physics.StartState;
import rimeward.sim.physics.TunnelParameters;
import rimeward.sim.world.GrowerRounds;
import rimeward.site.Site;

/** Reads {@code [truth]}: what tunnel, machines and sensors truly are, as against what the settings say of them. */
record Truth(
        TunnelParameters tunnel,
        MachineTruth.Dials machines,
        List<SensorVices> sensors,
        boolean doorContact,
        StartState start,
        Rounds rounds) {

    /** When the grower comes to empty the tank: never, unless the scenario says when. */
    record Rounds(Optional<Times.Moment> first, Optional<Duration> every) {
        GrowerRounds from(LocalDateTime start) {
            if (first.isEmpty()) {
                return GrowerRounds.none();
            }
            double firstS = (double) Math.max(0, first.get().afterStartS(start));
            double everyS = every.map(length -> (double) length.toSeconds()).orElse(Double.POSITIVE_INFINITY);
            return new GrowerRounds(firstS, Math.max(1, everyS));
        }
    }

    /** Without a site, which its machines and sensors refer to, only what needs none is read. */
    static Optional<Truth> read(TableReader truth, Optional<Site> site) {
        Optional<TunnelParameters> tunnel = TunnelTruth.read(truth);
        Optional<StartState> start = TunnelTruth.start(truth);
        boolean doorContact = truth.get("door_contact", Kinds.yesNo(), false);
        Rounds rounds = rounds(truth.optionalTable("rounds"));
        if (site.isEmpty() || tunnel.isEmpty()) {
            List.of("heater", "dryer", "vent_fan", "sensor").forEach(truth::has); // known, but not read
            return Optional.empty();
        }
        Optional<MachineTruth.Dials> machines = MachineTruth.read(truth, site.get());
        List<SensorVices> sensors = SensorTruth.read(truth, site.get(), tunnel.get());
        return truth.whenSound(() ->
                new Truth(tunnel.get(), machines.orElseThrow(), sensors, doorContact, start.orElseThrow(), rounds));
    }

    private static Rounds rounds(TableReader table) {
        return new Rounds(table.find("first", Times.moment()), table.find("every", Kinds.duration()));
    }
}
