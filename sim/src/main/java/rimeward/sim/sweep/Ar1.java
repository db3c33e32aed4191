package rimeward.sim.sweep;

import java.util.List;
import rimeward.sim.fault.SeededStream;

/**
 * An autoregressive process of first order, fitted to what was recorded by its mean, variance and first autocorrelation (the Yule–Walker
 * equation of order one: Box &amp; Jenkins, Time Series Analysis, 1970).
 *
 * @param mean of what was recorded
 * @param spread its standard deviation about the mean
 * @param keeps how much of one step's anomaly is left at the next, 0…0.99
 */
record Ar1(double mean, double spread, double keeps) {

    /** Of several stretches of equal steps, each about the mean of all. */
    static Ar1 of(List<double[]> stretches) {
        double sum = 0;
        int count = 0;
        for (double[] stretch : stretches) {
            for (double value : stretch) {
                sum += value;
                count++;
            }
        }
        double mean = sum / count;
        double squares = 0;
        double products = 0;
        int pairs = 0;
        for (double[] stretch : stretches) {
            for (int i = 0; i < stretch.length; i++) {
                squares += (stretch[i] - mean) * (stretch[i] - mean);
                if (i > 0) {
                    products += (stretch[i] - mean) * (stretch[i - 1] - mean);
                    pairs++;
                }
            }
        }
        double variance = squares / count;
        double keeps = variance > 0 ? products / pairs / variance : 0;
        return new Ar1(mean, Math.sqrt(variance), Math.max(0, Math.min(0.99, keeps)));
    }

    /** Anomalies, of mean 0, step by step. */
    double[] anomalies(int steps, SeededStream luck) {
        double[] all = new double[steps];
        double stir = spread * Math.sqrt(1 - keeps * keeps);
        double value = spread * luck.bell();
        for (int i = 0; i < steps; i++) {
            all[i] = value;
            value = keeps * value + stir * luck.bell();
        }
        return all;
    }
}
