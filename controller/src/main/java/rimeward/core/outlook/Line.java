package rimeward.core.outlook;

/** A straight line by least squares. Where all x are the same it is level. */
record Line(double slope, double atZero, double meanX, double squaresX, int points) {
    /** Less spread than this tells no slope. */
    private static final double LEAST_SQUARES = 1e-9;

    static Line through(double[] x, double[] y) {
        double meanX = mean(x);
        double meanY = mean(y);
        double squares = 0;
        double products = 0;
        for (int i = 0; i < x.length; i++) {
            squares += (x[i] - meanX) * (x[i] - meanX);
            products += (x[i] - meanX) * (y[i] - meanY);
        }
        double slope = squares < LEAST_SQUARES ? 0 : products / squares;
        return new Line(slope, meanY - slope * meanX, meanX, squares, x.length);
    }

    double at(double x) {
        return atZero + slope * x;
    }

    /** What is left of each y. */
    double[] residuals(double[] x, double[] y) {
        double[] left = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            left[i] = y[i] - at(x[i]);
        }
        return left;
    }

    /** How much farther than the points lie from the line the line itself may be off at x because of its slope; in squares of that. */
    double farOff(double x) {
        return squaresX < LEAST_SQUARES ? 0 : (x - meanX) * (x - meanX) / squaresX;
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum / values.length;
    }
}
