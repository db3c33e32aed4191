package rimeward.adapter.config;

import java.util.Optional;
import rimeward.site.Machine;
import rimeward.site.Meter;
import rimeward.site.Role;
import rimeward.site.Wiring;

/** Reads what all switched machines have in common. */
final class MachineTable {
    private MachineTable() {}

    static Optional<Machine> read(TableReader table, Role role) {
        String id = table.get("id", Kinds.id());
        double ratedW = table.get("rated_W", Kinds.number(1, 20_000));
        double minOnS = table.get("min_on_s", Kinds.number(0, 3600));
        double minRestS = table.get("min_rest_s", Kinds.number(0, 3600));
        int maxStartsPerH = table.get("max_starts_per_h", Kinds.whole(1, 60));
        Meter meter = MeterTable.read(table, ratedW);
        Optional<TableReader> relay = table.findTable("relay");
        Wiring wiring = relay.<Wiring>flatMap(MachineTable::line).orElse(new Wiring.NotWired());
        double shareS = 3600.0 / maxStartsPerH;
        if (table.isSound() && minOnS + minRestS > shareS) {
            table.fault(
                    "max_starts_per_h",
                    "leaves " + Shown.number(StrictMath.floor(shareS))
                            + " s from start to start, less than min_on_s + min_rest_s = "
                            + Shown.number(minOnS + minRestS) + " s",
                    "lower it to at most " + (int) (3600 / (minOnS + minRestS)));
        }
        return table.whenSound(() -> new Machine(id, role, ratedW, minOnS, minRestS, maxStartsPerH, meter, wiring));
    }

    /** A relay on a pin states its levels at start and stop: a library's default may close it. */
    private static Optional<Wiring> line(TableReader table) {
        String chip = table.get("chip", Kinds.text());
        int line = table.get("line", Kinds.whole(0, 511));
        boolean activeLow = table.get("active_low", Kinds.yesNo("whether the relay closes when the line is low"));
        boolean closedAtStart = table.get(
                "closed_at_start", Kinds.yesNo("whether the relay is closed when the service takes the line"));
        boolean closedAtStop =
                table.get("closed_at_stop", Kinds.yesNo("whether the relay is closed when the service lets go"));
        return table.whenSound(() -> new Wiring.GpioLine(chip, line, activeLow, closedAtStart, closedAtStop));
    }
}
