package rimeward.adapter.pi;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rimeward.site.Wiring;

/** A machine's relay, its line as soon as that can be had, and whether it does as told. Each change of that is logged once. */
final class Relay {
    private static final Logger LOG = LoggerFactory.getLogger(Relay.class);

    private final int index;
    private final String machine;
    private final Wiring.GpioLine at;
    private @Nullable RelayLine line;
    private @Nullable String trouble;

    /** @param index the machine's place in the site */
    Relay(int index, String machine, Wiring.GpioLine at) {
        this.index = index;
        this.machine = machine;
        this.at = at;
    }

    int index() {
        return index;
    }

    boolean isTaken() {
        return line != null;
    }

    boolean isFailing() {
        return trouble != null;
    }

    /** Why its line was not to be had at the last try, or does not do as told. */
    Optional<String> trouble() {
        return Optional.ofNullable(trouble);
    }

    /** Takes its line, unless it has it, at the level that leaves the relay closed or open. */
    void take(LineTaker from, boolean closed) {
        if (line != null) {
            return;
        }
        try {
            line = from.take(machine, at, closed != at.activeLow());
            works();
        } catch (LinesRefused e) {
            refused(e.why());
        }
    }

    void refused(String why) {
        fails(why, null);
    }

    /** Written at every tick, changed or not: whatever else moved the line is put right by the next one. */
    void close(boolean closed) {
        if (line == null) {
            return;
        }
        boolean high = closed != at.activeLow();
        try {
            line.drive(high);
            if (line.isHigh() == high) {
                works();
            } else {
                fails(name() + " was driven " + level(high) + " and reads back " + level(!high), null);
            }
        } catch (RuntimeException e) { // a bug below included: the other machines' lines come next
            fails(name() + " cannot be driven or read", e);
        }
    }

    private String name() {
        return "line " + at.line() + " of " + at.chip() + " (relay of " + machine + ")";
    }

    private static String level(boolean high) {
        return high ? "high" : "low";
    }

    void stop() {
        close(at.closedAtStop());
    }

    private void works() {
        if (trouble != null) {
            trouble = null;
            LOG.info("relay of {} obeys again", machine);
        }
    }

    private void fails(String why, @Nullable RuntimeException cause) {
        if (trouble == null) {
            LOG.error("relay of {} does not obey: {}", machine, why, cause);
        }
        trouble = why;
    }
}
