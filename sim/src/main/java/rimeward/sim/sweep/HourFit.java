package rimeward.sim.sweep;

import java.util.ArrayList;
import java.util.List;

/**
 * How recorded hours depart from a smooth day.
 *
 * @param airK of the air's temperature about the day's own sine
 * @param depressionK of the dew point below the air
 * @param windRatio of the wind to its mean
 * @param cloud of the cloud about its mean
 */
record HourFit(Ar1 airK, Ar1 depressionK, Ar1 windRatio, Ar1 cloud) {

    static HourFit of(List<double[][]> nights) {
        List<double[]> air = new ArrayList<>();
        List<double[]> depression = new ArrayList<>();
        List<double[]> wind = new ArrayList<>();
        List<double[]> cloud = new ArrayList<>();
        for (double[][] hours : nights) {
            double[] airC = column(hours, 0);
            double[] dewC = column(hours, 1);
            air.add(withoutSine(airC));
            double[] below = new double[airC.length];
            for (int i = 0; i < below.length; i++) {
                below[i] = airC[i] - dewC[i];
            }
            depression.add(below);
            wind.add(overMean(column(hours, 2)));
            cloud.add(aboutMean(column(hours, 3)));
        }
        return new HourFit(Ar1.of(air), Ar1.of(depression), Ar1.of(wind), Ar1.of(cloud));
    }

    private static double[] column(double[][] rows, int which) {
        double[] column = new double[rows.length];
        for (int i = 0; i < rows.length; i++) {
            column[i] = rows[i][which];
        }
        return column;
    }

    /** Less mean and first harmonic of 24 h, by sums that are exact for whole days. */
    private static double[] withoutSine(double[] values) {
        double mean = mean(values);
        double cosine = 0;
        double sine = 0;
        for (int i = 0; i < values.length; i++) {
            cosine += 2 * values[i] * StrictMath.cos(turn(i)) / values.length;
            sine += 2 * values[i] * StrictMath.sin(turn(i)) / values.length;
        }
        double[] rest = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            rest[i] = values[i] - mean - cosine * StrictMath.cos(turn(i)) - sine * StrictMath.sin(turn(i));
        }
        return rest;
    }

    private static double turn(int hour) {
        return 2 * StrictMath.PI * hour / 24;
    }

    private static double[] overMean(double[] values) {
        double mean = Math.max(0.1, mean(values));
        double[] ratio = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            ratio[i] = values[i] / mean;
        }
        return ratio;
    }

    private static double[] aboutMean(double[] values) {
        double mean = mean(values);
        double[] rest = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            rest[i] = values[i] - mean;
        }
        return rest;
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum / values.length;
    }
}
