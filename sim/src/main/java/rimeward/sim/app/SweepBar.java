package rimeward.sim.app;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.function.DoubleSupplier;
import rimeward.report.Say;
import rimeward.sim.sweep.Sweep;
import rimeward.sim.sweep.WinterLine;

/** How far a sweep is, in one line on a terminal; nothing where output goes to a file. */
final class SweepBar implements Sweep.Onlooker {
    private static final int WIDTH = 30;

    private final Progress line;
    private final DoubleSupplier sinceS;
    private int ran;
    private int broken;

    SweepBar(PrintWriter err, DoubleSupplier sinceS) {
        line = new Progress(err);
        this.sinceS = sinceS;
    }

    @Override
    public void done(WinterLine winter, int number, int of) {
        ran++;
        broken += winter.broken().isEmpty() ? 0 : 1;
        int full = (int) ((long) WIDTH * number / of);
        long leftS = Math.round(sinceS.getAsDouble() / ran * (of - number));
        line.show(String.format(
                Locale.ROOT,
                "[%s%s] %d of %d winters, %d broke a property, %s left",
                "#".repeat(full),
                ".".repeat(WIDTH - full),
                number,
                of,
                broken,
                Say.duration(leftS)));
    }

    /** Winters that were not there before. */
    int ran() {
        return ran;
    }

    void clear() {
        line.clear();
    }
}
