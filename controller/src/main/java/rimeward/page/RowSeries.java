package rimeward.page;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import rimeward.record.FrameRow;
import rimeward.strip.Series;

/** One quantity of a night's kept frames. */
record RowSeries(List<RowView> views, List<OptionalDouble> values) implements Series {
    static RowSeries of(List<RowView> rows, Function<RowView, OptionalDouble> quantity) {
        return new RowSeries(rows, rows.stream().map(quantity).toList());
    }

    static long epochS(FrameRow row) {
        return Math.floorDiv(Intervals.epochMs(row), 1000);
    }

    @Override
    public int rows() {
        return views.size();
    }

    @Override
    public long epochS(int row) {
        return epochS(views.get(row).row());
    }

    @Override
    public double value(int row) {
        return values.get(row).orElse(0);
    }

    @Override
    public boolean isKnown(int row) {
        return values.get(row).isPresent();
    }

    /** The row with the lowest value; negative where none is known. */
    int leastRow() {
        int least = -1;
        for (int row = 0; row < rows(); row++) {
            least = isKnown(row) && (least < 0 || value(row) < value(least)) ? row : least;
        }
        return least;
    }

    /** The lowest value, or another where none is known. */
    double least(double otherwise) {
        return values.stream()
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .min()
                .orElse(otherwise);
    }

    double most(double otherwise) {
        return values.stream()
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .max()
                .orElse(otherwise);
    }
}
