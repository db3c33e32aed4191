package rimeward.strip;

/** A series that holds each value until the next row, as one mean for each column of the strip. */
final class ColumnMeans {
    private ColumnMeans() {}

    static double[] of(Span span, Series series) {
        double[] means = new double[Span.COLUMNS];
        for (int row = 0; row < series.rows(); row++) {
            long fromS = Math.max(series.epochS(row), span.startS());
            long toS = row + 1 < series.rows() ? Math.min(series.epochS(row + 1), span.endS()) : span.endS();
            if (toS > fromS && series.isKnown(row)) {
                spread(means, place(span, fromS), place(span, toS), series.value(row));
            }
        }
        return means;
    }

    private static double place(Span span, long epochS) {
        return (double) (epochS - span.startS()) * Span.COLUMNS / span.lengthS();
    }

    private static void spread(double[] means, double from, double to, double value) {
        int last = Math.min(means.length - 1, (int) to);
        for (int column = (int) from; column <= last; column++) {
            double share = Math.min(to, column + 1.0) - Math.max(from, column);
            means[column] += Math.max(0, share) * value;
        }
    }
}
