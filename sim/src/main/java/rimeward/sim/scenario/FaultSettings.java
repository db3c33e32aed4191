package rimeward.sim.scenario;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import rimeward.adapter.config.Kinds;
import rimeward.adapter.config.TableReader;
import rimeward.sim.fault.Fault;
import rimeward.sim.fault.FaultKind;
import rimeward.site.Machine;
import rimeward.site.Sensor;
import rimeward.site.Site;

/** Reads {@code [[fault]]}: what goes wrong, when, for how long. */
final class FaultSettings {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

    private final LocalDateTime start;
    private final Site site;

    FaultSettings(LocalDateTime start, Site site) {
        this.start = start;
        this.site = site;
    }

    List<Fault> read(TableReader top) {
        List<Fault> faults = new ArrayList<>();
        for (TableReader table : top.tables("fault")) {
            fault(table).ifPresent(faults::add);
        }
        return faults;
    }

    private Optional<Fault> fault(TableReader table) {
        FaultKind kind = table.get("kind", Kinds.word(kinds()));
        long atS = table.get("at", Times.moment()).afterStartS(start);
        if (table.isSound() && atS < 0) {
            table.fault("at", "is before the start, " + CLOCK.format(start), "name a later time");
        }
        double lastsS = lastsS(table, kind);
        String target = kind.needsTarget() ? table.get("of", Kinds.word(targets(kind))) : "";
        double magnitude = kind.usualMagnitude();
        if (!kind.unit().isEmpty()) {
            String key = "by_" + kind.unit().replace("/", "_per_");
            magnitude = table.get(key, Kinds.number(kind.leastMagnitude(), kind.mostMagnitude()), magnitude);
        }
        double by = magnitude;
        return table.whenSound(() -> new Fault((double) atS, kind, target, lastsS, by));
    }

    /** A moment's fault has no length; any other lasts for ever unless it says how long. */
    private static double lastsS(TableReader table, FaultKind kind) {
        if (kind.isMomentary()) {
            return 0;
        }
        return table.find("lasts", Kinds.duration())
                .map(length -> (double) length.toSeconds())
                .orElse(Double.POSITIVE_INFINITY);
    }

    private static Map<String, FaultKind> kinds() {
        Map<String, FaultKind> words = new LinkedHashMap<>();
        for (FaultKind kind : FaultKind.values()) {
            words.put(kind.label(), kind);
        }
        return words;
    }

    private Map<String, String> targets(FaultKind kind) {
        Map<String, String> ids = new LinkedHashMap<>();
        if (kind.isOfSensor()) {
            site.sensors().stream().map(Sensor::id).forEach(id -> ids.put(id, id));
        } else {
            site.machines().stream().map(Machine::id).forEach(id -> ids.put(id, id));
        }
        return ids;
    }
}
