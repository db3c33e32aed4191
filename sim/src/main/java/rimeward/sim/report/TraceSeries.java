package rimeward.sim.report;

import rimeward.sim.run.Quantity;
import rimeward.sim.run.Trace;
import rimeward.strip.Series;

/** One quantity of a trace. */
record TraceSeries(Trace trace, Quantity quantity) implements Series {
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
        return trace.at(quantity, row);
    }

    @Override
    public boolean isKnown(int row) {
        return quantity != Quantity.JUDGED_C || (trace.hasJudged(row) && trace.isPowered(row));
    }

    double least() {
        double least = Double.POSITIVE_INFINITY;
        for (int row = 0; row < rows(); row++) {
            least = isKnown(row) ? Math.min(least, value(row)) : least;
        }
        return least;
    }

    double most() {
        return value(mostRow());
    }

    /** The first row with the highest value. */
    int mostRow() {
        int most = 0;
        for (int row = 1; row < rows(); row++) {
            most = isKnown(row) && value(row) > value(most) ? row : most;
        }
        return most;
    }
}
