package rimeward.strip;

/**
 * A series as the data of an SVG path, thinned to what can be seen: of each column the first, lowest, highest and last value; and of these
 * only the points that a straight line would miss by more than {@link #TOLERANCE_UNITS} (a swinging door, as process recorders use it).
 */
final class Curve {
    /** A quarter of a pixel. */
    private static final int TOLERANCE_UNITS = 1;

    private final ColumnPoints points = new ColumnPoints();
    private final PathText path = new PathText();

    private Curve() {}

    /** @param step columns that count as one; more than 1 for a small drawing */
    static String path(Span span, Scale scale, Series series, int step) {
        Curve curve = new Curve();
        for (int row = 0; row < series.rows(); row++) {
            long atS = series.epochS(row);
            if (!series.isKnown(row)) {
                curve.lift();
            } else if (span.contains(atS)) {
                curve.points.add(span.column(atS) / step * step, scale.units(series.value(row)));
            }
        }
        curve.lift();
        return curve.path.toString();
    }

    /** Draws the points so far as one line and starts afresh. */
    private void lift() {
        points.endColumn();
        if (points.size() > 0) {
            swing();
        }
        points.clear();
    }

    private void swing() {
        path.moveTo(points.x(0), points.y(0));
        int anchor = 0;
        double least = Double.NEGATIVE_INFINITY;
        double most = Double.POSITIVE_INFINITY;
        for (int i = 1; i < points.size(); i++) {
            boolean upright = points.x(i) == points.x(i - 1);
            double slope = upright ? 0 : slope(anchor, i, 0);
            if (upright || slope < least || slope > most) {
                anchor = i - 1;
                draw(anchor);
                least = Double.NEGATIVE_INFINITY;
                most = Double.POSITIVE_INFINITY;
            }
            if (upright) {
                anchor = i;
                draw(i);
            } else {
                least = Math.max(least, slope(anchor, i, -TOLERANCE_UNITS));
                most = Math.min(most, slope(anchor, i, TOLERANCE_UNITS));
            }
        }
        draw(points.size() - 1);
    }

    private double slope(int from, int to, int allowanceUnits) {
        return (double) (points.y(to) + allowanceUnits - points.y(from)) / (points.x(to) - points.x(from));
    }

    private void draw(int point) {
        path.lineTo(points.x(point), points.y(point));
    }
}
