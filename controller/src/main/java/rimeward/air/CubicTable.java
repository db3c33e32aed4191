package rimeward.air;

/**
 * A curve as one cubic per cell, matching value and slope at the cell's two ends (Hermite). Which cell a value falls in is the
 * caller's business, so that lookups by equal steps and by floating-point exponent can share this.
 */
final class CubicTable {

    private final double[] coefficients;

    /**
     * @param x the ends of the cells, rising; one more than there are cells
     * @param y the curve at {@code x}
     * @param slope its derivative at {@code x}
     */
    CubicTable(double[] x, double[] y, double[] slope) {
        coefficients = new double[4 * (x.length - 1)];
        for (int cell = 0; cell < x.length - 1; cell++) {
            double width = x[cell + 1] - x[cell];
            double rise = y[cell + 1] - y[cell];
            double startRise = slope[cell] * width;
            double endRise = slope[cell + 1] * width;
            coefficients[4 * cell] = y[cell];
            coefficients[4 * cell + 1] = startRise;
            coefficients[4 * cell + 2] = 3 * rise - 2 * startRise - endRise;
            coefficients[4 * cell + 3] = startRise + endRise - 2 * rise;
        }
    }

    /** The curve in {@code cell} at {@code fraction} (0…1) of its width. */
    double value(int cell, double fraction) {
        int i = 4 * cell;
        return coefficients[i]
                + fraction * (coefficients[i + 1] + fraction * (coefficients[i + 2] + fraction * coefficients[i + 3]));
    }

    /** Derivative by {@code fraction}, so per cell width. */
    double slopePerCell(int cell, double fraction) {
        int i = 4 * cell;
        return coefficients[i + 1] + fraction * (2 * coefficients[i + 2] + fraction * 3 * coefficients[i + 3]);
    }
}
