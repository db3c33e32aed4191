package rimeward.strip;

/** Strokes that hang between a limit and a line which is on its wrong side. */
final class Hatching {
    /** Columns from one stroke to the next: about 4 px on a wide screen. */
    private static final int SPACING = 8;

    private Hatching() {}

    static String path(Span span, Scale scale, Limit limit) {
        Series held = limit.held();
        int limitUnits = scale.units(limit.value());
        StringBuilder path = new StringBuilder();
        int last = -SPACING;
        for (int row = 0; row < held.rows(); row++) {
            boolean broken = span.contains(held.epochS(row)) && held.isKnown(row) && limit.isBroken(held.value(row));
            int column = span.column(held.epochS(row));
            if (broken && column >= last + SPACING) {
                path.append('M').append(column).append(' ').append(limitUnits);
                path.append('V').append(scale.units(held.value(row)));
                last = column;
            }
        }
        return path.toString();
    }
}
