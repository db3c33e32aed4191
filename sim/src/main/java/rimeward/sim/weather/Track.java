package rimeward.sim.weather;

import java.util.Arrays;

/**
 * One quantity over time at any, rising times, linear in between. What importers gather and recipes draw, before it becomes
 * a series.
 */
final class Track {
    private long[] epochS = new long[64];
    private double[] values = new double[64];
    private int size;

    void add(long atEpochS, double value) {
        if (size > 0 && atEpochS <= epochS[size - 1]) {
            throw new IllegalArgumentException("time " + atEpochS + " does not follow " + epochS[size - 1]);
        }
        if (size == epochS.length) {
            epochS = Arrays.copyOf(epochS, 2 * size);
            values = Arrays.copyOf(values, 2 * size);
        }
        epochS[size] = atEpochS;
        values[size++] = value;
    }

    int size() {
        return size;
    }

    long epochS(int i) {
        return epochS[i];
    }

    double value(int i) {
        return values[i];
    }

    /** The value at a time; that of the nearest end outside. The track must not be empty. */
    double at(long atEpochS) {
        int found = Arrays.binarySearch(epochS, 0, size, atEpochS);
        if (found >= 0) {
            return values[found];
        }
        int next = -found - 1;
        if (next == 0 || next == size) {
            return values[next == 0 ? 0 : size - 1];
        }
        double part = (double) (atEpochS - epochS[next - 1]) / (epochS[next] - epochS[next - 1]);
        return values[next - 1] + part * (values[next] - values[next - 1]);
    }
}
