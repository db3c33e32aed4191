package rimeward.sizing;

import java.util.Arrays;

/** Outside air over time: readings in order, no two at one moment. */
public final class AirCourse {
    private long[] epochS = new long[1024];
    private double[] airC = new double[1024];
    private int size;

    /** Adds a reading, which must be later than the last. */
    void add(long atEpochS, double readC) {
        if (size == epochS.length) {
            epochS = Arrays.copyOf(epochS, 2 * size);
            airC = Arrays.copyOf(airC, 2 * size);
        }
        epochS[size] = atEpochS;
        airC[size] = readC;
        size++;
    }

    int size() {
        return size;
    }

    long epochS(int at) {
        return epochS[at];
    }

    double airC(int at) {
        return airC[at];
    }

    /** The coldest reading, °C; there must be one. */
    public double lowestC() {
        return Arrays.stream(airC, 0, size).min().orElseThrow();
    }

    /** From the first reading to the last, s. */
    long spanS() {
        return size == 0 ? 0 : epochS[size - 1] - epochS[0];
    }
}
