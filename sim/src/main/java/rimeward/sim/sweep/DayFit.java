package rimeward.sim.sweep;

import java.util.List;
import rimeward.sim.fault.SeededStream;

/**
 * How recorded days follow one another: lowest and highest air, wind and cloud as one autoregressive process of first order, x(t) = A
 * x(t−1) + B e(t), with A = M1 M0⁻¹ and B Bᵀ = M0 − A M1ᵀ from the covariances of a day with itself and with the day before.
 *
 * <p>Source: the weakly stationary generating process of Richardson, "Stochastic simulation of daily precipitation, temperature, and
 * solar radiation", Water Resources Research 17 (1981) 182–190; wind and cloud in place of radiation, and without his rain.
 */
final class DayFit {
    private static final int OF_DAY = 4;

    private final double[][] means;
    private final double[][] carry;
    private final double[][] stir;

    /** Anomalies of all snaps together, each about its own mean: a snap's climate is not what its days do. */
    DayFit(List<double[][]> snaps) {
        means = new double[snaps.size()][];
        double[][] same = new double[OF_DAY][OF_DAY];
        double[][] next = new double[OF_DAY][OF_DAY];
        int days = 0;
        int pairs = 0;
        for (int s = 0; s < snaps.size(); s++) {
            double[][] rows = snaps.get(s);
            means[s] = meanOf(rows);
            for (int t = 0; t < rows.length; t++) {
                double[] now = minus(rows[t], means[s]);
                addProducts(same, now, now);
                days++;
                if (t > 0) {
                    addProducts(next, now, minus(rows[t - 1], means[s]));
                    pairs++;
                }
            }
        }
        double[][] m0 = Matrices.scaled(same, 1.0 / days);
        double[][] m1 = Matrices.scaled(next, 1.0 / Math.max(1, pairs));
        carry = Matrices.product(m1, Matrices.inverse(m0));
        stir = Matrices.root(Matrices.less(m0, Matrices.product(carry, Matrices.transposed(m1))), m0);
    }

    /** Days in a row: about the mean of one recorded snap, or between those of two. */
    double[][] days(int count, SeededStream luck) {
        double[] one = means[luck.below(means.length)];
        double[] other = means[luck.below(means.length)];
        double share = luck.nextDouble();
        double[] anomaly = Matrices.times(stir, bells(luck));
        double[][] days = new double[count][OF_DAY];
        for (int t = 0; t < count; t++) {
            for (int i = 0; i < OF_DAY; i++) {
                days[t][i] = one[i] + share * (other[i] - one[i]) + anomaly[i];
            }
            anomaly = plus(Matrices.times(carry, anomaly), Matrices.times(stir, bells(luck)));
        }
        return days;
    }

    private static double[] bells(SeededStream luck) {
        double[] bells = new double[OF_DAY];
        for (int i = 0; i < OF_DAY; i++) {
            bells[i] = luck.bell();
        }
        return bells;
    }

    private static double[] meanOf(double[][] rows) {
        double[] mean = new double[OF_DAY];
        for (double[] row : rows) {
            for (int i = 0; i < OF_DAY; i++) {
                mean[i] += row[i] / rows.length;
            }
        }
        return mean;
    }

    private static double[] minus(double[] one, double[] other) {
        double[] rest = new double[OF_DAY];
        for (int i = 0; i < OF_DAY; i++) {
            rest[i] = one[i] - other[i];
        }
        return rest;
    }

    private static double[] plus(double[] one, double[] other) {
        double[] sum = new double[OF_DAY];
        for (int i = 0; i < OF_DAY; i++) {
            sum[i] = one[i] + other[i];
        }
        return sum;
    }

    private static void addProducts(double[][] to, double[] one, double[] other) {
        for (int i = 0; i < OF_DAY; i++) {
            for (int j = 0; j < OF_DAY; j++) {
                to[i][j] += one[i] * other[j];
            }
        }
    }
}
