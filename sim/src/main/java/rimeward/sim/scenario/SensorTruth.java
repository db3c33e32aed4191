package rimeward.sim.scenario;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import rimeward.adapter.config.Kinds;
import rimeward.adapter.config.TableReader;
import rimeward.sim.device.SensorVices;
import rimeward.sim.physics.BenchParameters;
import rimeward.sim.physics.TunnelParameters;
import rimeward.site.Place;
import rimeward.site.Sensor;
import rimeward.site.Site;

/** Reads {@code [[truth.sensor]]}: how a sensor differs from the truth. A sensor that is not named is a usual one. */
final class SensorTruth {
    private static final SensorVices USUAL = SensorVices.usual();

    private SensorTruth() {}

    /** One for each of the site's sensors. */
    static List<SensorVices> read(TableReader truth, Site site, TunnelParameters tunnel) {
        Map<String, Integer> places = new LinkedHashMap<>();
        for (Sensor sensor : site.sensors()) {
            places.put(sensor.id(), places.size());
            requireBench(truth, sensor, tunnel);
        }
        List<SensorVices> vices = new ArrayList<>(Collections.nCopies(places.size(), USUAL));
        for (TableReader table : truth.tables("sensor")) {
            int place = table.get("of", Kinds.word(places));
            double lagS = table.get("lag_s", Kinds.number(0, 1800), USUAL.lagS());
            double offsetK = table.get("offset_K", Kinds.number(-10, 10), USUAL.offsetK());
            double noiseK = table.get("noise_K", Kinds.number(0, 5), USUAL.noiseK());
            double resolutionK = table.get("resolution_K", Kinds.number(0.001, 2), USUAL.resolutionK());
            double driftKPerDay = table.get("drift_K_per_day", Kinds.number(-5, 5), USUAL.driftKPerDay());
            double offsetPercent = table.get("offset_percent", Kinds.number(-30, 30), USUAL.offsetPercent());
            double noisePercent = table.get("noise_percent", Kinds.number(0, 10), USUAL.noisePercent());
            double resolution = table.get("resolution_percent", Kinds.number(0.001, 5), USUAL.resolutionPercent());
            table.whenSound(() -> new SensorVices(
                            lagS, offsetK, noiseK, resolutionK, driftKPerDay, offsetPercent, noisePercent, resolution))
                    .ifPresent(found -> vices.set(place, found));
        }
        return vices;
    }

    private static void requireBench(TableReader truth, Sensor sensor, TunnelParameters tunnel) {
        List<String> benches =
                tunnel.benches().stream().map(BenchParameters::name).toList();
        if (sensor.place() instanceof Place.Bench bench && !benches.contains(bench.name())) {
            truth.fault(
                    "bench",
                    "has none named \"" + bench.name() + "\", where the settings hang sensor " + sensor.id(),
                    "name it, or one of "
                            + benches.stream().map(name -> '"' + name + '"').collect(Collectors.joining(", ")));
        }
    }
}
