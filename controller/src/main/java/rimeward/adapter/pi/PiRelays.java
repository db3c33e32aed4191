package rimeward.adapter.pi;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rimeward.port.Relays;
import rimeward.site.Machine;
import rimeward.site.RelaySet;
import rimeward.site.Site;
import rimeward.site.Wiring;

/**
 * The site's relays on their lines. Each line is taken at the level that its relay's stated start asks for, and left at the level of
 * its stated stop. A machine without a line is never switched. For one thread.
 */
public final class PiRelays implements Relays, AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(PiRelays.class);

    private final LineTaker taker;
    private final List<Driven> lines = new ArrayList<>();

    /**
     * Takes every line at its start level.
     *
     * @param root {@code /}: where the chips' labels are looked up
     * @throws LinesRefused if a line cannot be had; those already taken are put at their stop level first
     */
    public static PiRelays of(Site site, Path root) {
        return new PiRelays(site, Pi4jLines.gpiod(root), true);
    }

    /**
     * Puts every line at its stop level and lets go: for whoever cleans up after a service that was killed.
     *
     * @throws LinesRefused if a line cannot be had
     */
    public static void release(Site site, Path root) {
        new PiRelays(site, Pi4jLines.gpiod(root), false).close();
    }

    PiRelays(Site site, LineTaker taker, boolean start) {
        this.taker = taker;
        try {
            for (int i = 0; i < site.machines().size(); i++) {
                take(i, site.machines().get(i), start);
            }
        } catch (LinesRefused e) {
            close();
            throw e;
        }
    }

    private void take(int index, Machine machine, boolean start) {
        if (machine.wiring() instanceof Wiring.GpioLine at) {
            boolean closed = start ? at.closedAtStart() : at.closedAtStop();
            RelayLine line = taker.take(machine.id(), at, closed != at.activeLow());
            lines.add(new Driven(index, machine.id(), at, line));
        }
    }

    @Override
    public void close(RelaySet set) {
        for (Driven each : lines) {
            each.close(set.has(each.index));
        }
    }

    /** Puts every line at its stop level, tries the others even if one fails, and lets go of them. */
    @Override
    public void close() {
        for (Driven each : lines) {
            each.close(each.at.closedAtStop());
        }
        taker.close();
    }

    /** A line and whether it has been told of as failing. */
    private static final class Driven {
        private final int index;
        private final String machine;
        private final Wiring.GpioLine at;
        private final RelayLine line;
        private boolean failing;

        Driven(int index, String machine, Wiring.GpioLine at, RelayLine line) {
            this.index = index;
            this.machine = machine;
            this.at = at;
            this.line = line;
        }

        /** Written at every tick, changed or not: whatever else moved the line is put right by the next one. */
        void close(boolean closed) {
            boolean high = closed != at.activeLow();
            try {
                line.drive(high);
                if (line.isHigh() == high) {
                    works();
                } else {
                    fails("reads back as " + (high ? "low" : "high"), null);
                }
            } catch (RelayLine.LineFailed e) {
                fails("cannot be driven or read", e);
            }
        }

        private void works() {
            if (failing) {
                failing = false;
                LOG.info("relay of {} obeys again", machine);
            }
        }

        private void fails(String why, RelayLine.@Nullable LineFailed cause) {
            if (!failing) {
                failing = true;
                LOG.error(
                        "relay of {} does not obey: {}; look at line {} of {}",
                        machine,
                        why,
                        at.line(),
                        at.chip(),
                        cause);
            }
        }
    }
}
