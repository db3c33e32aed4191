package rimeward.sim.scenario;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rimeward.adapter.config.Kinds;
import rimeward.adapter.config.TableReader;
import rimeward.site.Machine;
import rimeward.site.Site;

/** Reads {@code [[order]]}: what the grower asks for, and when. */
final class OrderSettings {
    /** As long as the controller takes it. */
    private static final Duration LONGEST = Duration.ofHours(4);

    private final LocalDateTime start;
    private final Site site;

    OrderSettings(LocalDateTime start, Site site) {
        this.start = start;
        this.site = site;
    }

    /** Oldest first. */
    List<StandDownAt> read(TableReader top) {
        List<StandDownAt> orders = new ArrayList<>();
        for (TableReader table : top.tables("order")) {
            order(table).ifPresent(orders::add);
        }
        orders.sort(Comparator.comparingLong(StandDownAt::atS));
        return orders;
    }

    private Optional<StandDownAt> order(TableReader table) {
        table.get("kind", Kinds.word(Map.of("stand-down", "stand-down")));
        long atS = table.get("at", Times.moment()).afterStartS(start);
        if (table.isSound() && atS < 0) {
            table.fault("at", "is before the start", "name a later time");
        }
        String machine = table.get("machine", Kinds.word(machines()));
        Duration lasts = table.get("for", Kinds.duration());
        if (table.isSound() && lasts.compareTo(LONGEST) > 0) {
            table.fault("for", "is longer than a machine may stand down", "name 4 hours or less");
        }
        return table.whenSound(() -> new StandDownAt(atS, machine, (double) lasts.toSeconds()));
    }

    private Map<String, String> machines() {
        Map<String, String> ids = new LinkedHashMap<>();
        site.machines().stream().map(Machine::id).forEach(id -> ids.put(id, id));
        return ids;
    }
}
