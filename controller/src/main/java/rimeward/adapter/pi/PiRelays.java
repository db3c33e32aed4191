package rimeward.adapter.pi;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import rimeward.port.Relays;
import rimeward.site.Machine;
import rimeward.site.RelaySet;
import rimeward.site.Site;
import rimeward.site.Wiring;

/**
 * The site's relays on their lines. Each line is taken at the level that its relay's stated start asks for, and left at the level of
 * its stated stop. A line that cannot be had is told of and asked for again; the others do their work meanwhile. A machine without a
 * line is never switched. For one thread.
 */
public final class PiRelays implements Relays, AutoCloseable {
    /** Beats between two tries to get what was refused: a minute. Own choice. */
    private static final int TRY_EVERY = 12;

    private final Supplier<LineTaker> takers;
    private final List<Relay> relays = new ArrayList<>();
    private @Nullable LineTaker taker;
    private int beats;

    /**
     * Takes every line that can be had at its start level.
     *
     * @param root {@code /}: where the chips' labels are looked up
     */
    public static PiRelays of(Site site, Path root) {
        return new PiRelays(site, () -> Pi4jLines.gpiod(root));
    }

    /**
     * Takes every line at its stop level: for whoever tries relays by hand.
     *
     * @throws LinesRefused if a line cannot be had; those that could are let go at their stop level
     */
    public static PiRelays atStop(Site site, Path root) {
        PiRelays relays = new PiRelays(site, () -> Pi4jLines.gpiod(root), site.stopState());
        if (relays.isFailing()) {
            relays.close();
            throw relays.refused();
        }
        return relays;
    }

    /**
     * Puts every line at its stop level and lets go: for whoever cleans up after a service that was killed.
     *
     * @throws LinesRefused if a line cannot be had or does not obey; all others are at their stop level then
     */
    public static void release(Site site, Path root) {
        release(site, () -> Pi4jLines.gpiod(root));
    }

    static void release(Site site, Supplier<LineTaker> takers) {
        PiRelays relays = new PiRelays(site, takers, site.stopState());
        relays.close();
        if (relays.isFailing()) {
            throw relays.refused();
        }
    }

    /** One line of text for each different reason: without any chip, it is the same for all. */
    private LinesRefused refused() {
        return new LinesRefused(relays.stream()
                .flatMap(each -> each.trouble().stream())
                .distinct()
                .collect(Collectors.joining("\n")));
    }

    PiRelays(Site site, Supplier<LineTaker> takers) {
        this(site, takers, startState(site));
    }

    private PiRelays(Site site, Supplier<LineTaker> takers, RelaySet first) {
        this.takers = takers;
        for (int i = 0; i < site.machines().size(); i++) {
            Machine machine = site.machines().get(i);
            if (machine.wiring() instanceof Wiring.GpioLine at) {
                relays.add(new Relay(i, machine.id(), at));
            }
        }
        takeWhatCanBeHad(first);
    }

    private static RelaySet startState(Site site) {
        RelaySet set = RelaySet.none();
        for (int i = 0; i < site.machines().size(); i++) {
            boolean closed = site.machines().get(i).wiring() instanceof Wiring.GpioLine line && line.closedAtStart();
            set = closed ? set.with(i) : set;
        }
        return set;
    }

    private void takeWhatCanBeHad(RelaySet closed) {
        if (relays.isEmpty()) {
            return;
        }
        try {
            LineTaker from = taker == null ? takers.get() : taker;
            taker = from;
            relays.forEach(each -> each.take(from, closed.has(each.index())));
        } catch (LinesRefused e) {
            relays.forEach(each -> each.refused(e.why()));
        }
    }

    @Override
    public void close(RelaySet set) {
        beats++;
        if (beats % TRY_EVERY == 0 && relays.stream().anyMatch(each -> !each.isTaken())) {
            takeWhatCanBeHad(set);
        }
        for (Relay each : relays) {
            each.close(set.has(each.index()));
        }
    }

    @Override
    public boolean isFailing() {
        for (Relay each : relays) {
            if (each.isFailing()) {
                return true;
            }
        }
        return false;
    }

    /** Puts every line at its stop level, tries the others even if one fails, and lets go of them. */
    @Override
    public void close() {
        relays.forEach(Relay::stop);
        LineTaker from = taker;
        if (from != null) {
            from.close();
        }
    }
}
