package rimeward.sim.sweep;

/** Small square matrices, row by row. */
final class Matrices {
    private Matrices() {}

    static double[][] scaled(double[][] matrix, double by) {
        double[][] scaled = new double[matrix.length][matrix.length];
        for (int i = 0; i < matrix.length; i++) {
            for (int j = 0; j < matrix.length; j++) {
                scaled[i][j] = matrix[i][j] * by;
            }
        }
        return scaled;
    }

    static double[][] less(double[][] one, double[][] other) {
        double[][] rest = scaled(one, 1);
        for (int i = 0; i < one.length; i++) {
            for (int j = 0; j < one.length; j++) {
                rest[i][j] -= other[i][j];
            }
        }
        return rest;
    }

    static double[][] transposed(double[][] matrix) {
        double[][] turned = new double[matrix.length][matrix.length];
        for (int i = 0; i < matrix.length; i++) {
            for (int j = 0; j < matrix.length; j++) {
                turned[j][i] = matrix[i][j];
            }
        }
        return turned;
    }

    static double[][] product(double[][] one, double[][] other) {
        double[][] product = new double[one.length][];
        double[][] columns = transposed(other);
        for (int j = 0; j < one.length; j++) {
            product[j] = times(one, columns[j]);
        }
        return transposed(product);
    }

    static double[] times(double[][] matrix, double[] vector) {
        double[] result = new double[vector.length];
        for (int i = 0; i < vector.length; i++) {
            for (int j = 0; j < vector.length; j++) {
                result[i] += matrix[i][j] * vector[j];
            }
        }
        return result;
    }

    /** Of a positive definite matrix, by Gauss and Jordan without pivots. */
    static double[][] inverse(double[][] matrix) {
        int size = matrix.length;
        double[][] left = scaled(matrix, 1);
        double[][] right = new double[size][size];
        for (int i = 0; i < size; i++) {
            right[i][i] = 1;
        }
        for (int p = 0; p < size; p++) {
            double pivot = left[p][p];
            for (int j = 0; j < size; j++) {
                left[p][j] /= pivot;
                right[p][j] /= pivot;
            }
            for (int i = 0; i < size; i++) {
                double factor = i == p ? 0 : left[i][p];
                for (int j = 0; j < size; j++) {
                    left[i][j] -= factor * left[p][j];
                    right[i][j] -= factor * right[p][j];
                }
            }
        }
        return right;
    }

    /**
     * Lower triangle whose square is the matrix (Cholesky). What few recorded days leave not quite positive is mended by more of each
     * variance itself.
     */
    static double[][] root(double[][] matrix, double[][] variances) {
        for (double more = 0; ; more = more * 2 + 1e-6) {
            double[][] mended = scaled(matrix, 1);
            for (int i = 0; i < matrix.length; i++) {
                mended[i][i] += more * variances[i][i];
            }
            double[][] root = cholesky(mended);
            if (root.length > 0) {
                return root;
            }
        }
    }

    /** Nothing where it is not positive definite. */
    private static double[][] cholesky(double[][] matrix) {
        double[][] root = new double[matrix.length][matrix.length];
        for (int i = 0; i < matrix.length; i++) {
            for (int j = 0; j <= i; j++) {
                double rest = (matrix[i][j] + matrix[j][i]) / 2;
                for (int k = 0; k < j; k++) {
                    rest -= root[i][k] * root[j][k];
                }
                if (i == j && !(rest > 0)) {
                    return new double[0][];
                }
                root[i][j] = i == j ? Math.sqrt(rest) : rest / root[j][j];
            }
        }
        return root;
    }
}
