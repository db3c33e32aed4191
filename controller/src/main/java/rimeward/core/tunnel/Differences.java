package rimeward.core.tunnel;

import java.util.function.ToDoubleFunction;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/**
 * A function's slopes and curvature at a place, by central differences.
 *
 * @param step to either side, in the unit of each coordinate
 */
record Differences(ToDoubleFunction<double[]> function, double step) {
    double[] slopes(double[] at) {
        double[] slopes = new double[at.length];
        for (int i = 0; i < at.length; i++) {
            slopes[i] = (value(moved(at, i, step)) - value(moved(at, i, -step))) / (2 * step);
        }
        return slopes;
    }

    /** The matrix of second derivatives. */
    RealMatrix curvature(double[] at) {
        RealMatrix matrix = MatrixUtils.createRealMatrix(at.length, at.length);
        double here = value(at);
        for (int i = 0; i < at.length; i++) {
            double up = value(moved(at, i, step));
            double down = value(moved(at, i, -step));
            matrix.setEntry(i, i, (up - 2 * here + down) / (step * step));
            for (int j = 0; j < i; j++) {
                double cross = (value(moved(moved(at, i, step), j, step))
                                - value(moved(moved(at, i, step), j, -step))
                                - value(moved(moved(at, i, -step), j, step))
                                + value(moved(moved(at, i, -step), j, -step)))
                        / (4 * step * step);
                matrix.setEntry(i, j, cross);
                matrix.setEntry(j, i, cross);
            }
        }
        return matrix;
    }

    private double value(double[] at) {
        return function.applyAsDouble(at);
    }

    /** The place that lies so far from another along one coordinate. */
    static double[] moved(double[] at, int coordinate, double by) {
        double[] there = at.clone();
        there[coordinate] += by;
        return there;
    }
}
