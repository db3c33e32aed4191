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
    private @Nullable String refusal;
    private boolean failing;

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
        return failing;
    }

    /** Why its line was not to be had at the last try. */
    Optional<String> refusal() {
        return Optional.ofNullable(refusal);
    }

    /** Takes its line, unless it has it, at the level that leaves the relay closed or open. */
    void take(LineTaker from, boolean closed) {
        if (line != null) {
            return;
        }
        try {
            line = from.take(machine, at, closed != at.activeLow());
            refusal = null;
        } catch (LinesRefused e) {
            refused(e.why());
        }
    }

    void refused(String why) {
        refusal = why;
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
                fails("reads back as " + (high ? "low" : "high"), null);
            }
        } catch (RelayLine.LineFailed e) {
            fails("cannot be driven or read", e);
        }
    }

    void stop() {
        close(at.closedAtStop());
    }

    private void works() {
        if (failing) {
            failing = false;
            LOG.info("relay of {} obeys again", machine);
        }
    }

    private void fails(@Nullable String why, RelayLine.@Nullable LineFailed cause) {
        if (!failing) {
            failing = true;
            LOG.error("relay of {} on line {} of {} does not obey: {}", machine, at.line(), at.chip(), why, cause);
        }
    }
}
