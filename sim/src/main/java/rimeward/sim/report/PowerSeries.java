package rimeward.sim.report;

import rimeward.sim.run.Trace;
import rimeward.site.RelaySet;
import rimeward.strip.Series;

/**
 * Summed power of some machines, W; or 1 where any of their relays is closed, else 0.
 *
 * @param asked relays instead of power
 */
record PowerSeries(Trace trace, RelaySet machines, boolean asked) implements Series {
    /** Less than this is an indicator lamp. */
    static final double WHISPER_W = 5;

    @Override
    public int rows() {
        return trace.rows();
    }

    @Override
    public long epochS(int row) {
        return trace.epochS(row);
    }

    @Override
    public double value(int row) {
        if (asked) {
            return trace.isPowered(row) && trace.closed(row).meets(machines) ? 1 : 0;
        }
        double sumW = 0;
        for (int i = 0; i < trace.machines(); i++) {
            sumW += machines.has(i) ? trace.powerW(i, row) : 0;
        }
        return sumW;
    }

    /** By the trace's rows, each holding until the next; the summary's meter is finer. */
    double energyKWh(long endS) {
        double sumJ = 0;
        for (int row = 0; row < rows(); row++) {
            long toS = row + 1 < rows() ? epochS(row + 1) : endS;
            sumJ += value(row) * Math.max(0, toS - epochS(row));
        }
        return sumJ / 3.6e6;
    }
}
