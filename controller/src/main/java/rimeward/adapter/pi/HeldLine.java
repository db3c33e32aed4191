package rimeward.adapter.pi;

import java.util.function.Consumer;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;
import rimeward.site.InputLine;

/** A line that is taken when it is first asked for, and again when it could not be had or was lost. For one thread. */
final class HeldLine {
    /** No sooner than this after a refusal, s. */
    static final double AGAIN_S = 10;

    private final String what;
    private final InputLine at;
    private final boolean edges;
    private final InputTaker taker;
    private final LongSupplier nanoTime;
    private @Nullable TakenLine line;
    private @Nullable LinesRefused refusal;
    private long refusedNs;

    HeldLine(String what, InputLine at, boolean edges, InputTaker taker, LongSupplier nanoTime) {
        this.what = what;
        this.at = at;
        this.edges = edges;
        this.taker = taker;
        this.nanoTime = nanoTime;
    }

    /**
     * Does something with the line. One that cannot be had, or fails, is let go and taken anew another time.
     *
     * @param taken run first when the line was not held before
     * @param fails gets the reason, for people
     */
    void use(Runnable taken, Consumer<TakenLine> with, Consumer<String> fails) {
        try {
            boolean anew = line == null;
            TakenLine held = line();
            if (anew) {
                taken.run();
            }
            with.accept(held);
        } catch (LinesRefused | RelayLine.LineFailed e) {
            letGo();
            fails.accept(String.valueOf(e.getMessage()));
        }
    }

    /** The line; refused if it cannot be had now, or could not be had a moment ago. */
    private TakenLine line() {
        TakenLine held = line;
        if (held != null) {
            return held;
        }
        long nowNs = nanoTime.getAsLong();
        LinesRefused before = refusal;
        if (before != null && nowNs - refusedNs < AGAIN_S * 1e9) {
            throw before;
        }
        try {
            held = taker.take(what, at, edges);
            line = held;
            refusal = null;
            return held;
        } catch (LinesRefused e) {
            refusal = e;
            refusedNs = nowNs;
            throw e;
        }
    }

    void letGo() {
        TakenLine held = line;
        line = null;
        if (held != null) {
            held.close();
        }
    }
}
