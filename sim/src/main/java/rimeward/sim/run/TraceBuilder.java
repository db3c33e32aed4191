package rimeward.sim.run;

import java.util.Arrays;
import rimeward.core.guard.Holder;
import rimeward.core.judgement.Trust;
import rimeward.site.RelaySet;

/** Writes a {@link Trace} row by row; for one thread. Set every part of a row, then {@link #endRow}. */
@SuppressWarnings(
        "EnumOrdinal") // columns stand in the enum's order, and codes are the enum's, within this package only
public final class TraceBuilder {
    private static final int FIRST_ROWS = 4096;

    private int rows;
    private long[] epochS = new long[FIRST_ROWS];
    private final float[][] numbers = new float[Quantity.values().length][FIRST_ROWS];
    private final float[][] powersW;
    private short[] closed = new short[FIRST_ROWS];
    private byte[] holders = new byte[FIRST_ROWS];
    private byte[] trusts = new byte[FIRST_ROWS];
    private byte[] flags = new byte[FIRST_ROWS];

    public TraceBuilder(int machines) {
        powersW = new float[machines][FIRST_ROWS];
    }

    public TraceBuilder time(long atEpochS) {
        epochS[rows] = atEpochS;
        return this;
    }

    public TraceBuilder put(Quantity quantity, double value) {
        numbers[quantity.ordinal()][rows] = (float) value;
        return this;
    }

    /** What the controller believes the coldest bench has, °C; leave it out where it knows nothing. */
    public TraceBuilder judged(double coldestC) {
        flags[rows] |= Trace.JUDGED;
        return put(Quantity.JUDGED_C, coldestC);
    }

    public TraceBuilder power(int machine, double powerW) {
        powersW[machine][rows] = (float) powerW;
        return this;
    }

    public TraceBuilder control(RelaySet commanded, Holder holder, Trust trust) {
        closed[rows] = (short) commanded.bits();
        holders[rows] = (byte) holder.ordinal();
        trusts[rows] = (byte) trust.ordinal();
        return this;
    }

    public TraceBuilder truth(boolean powered, boolean needed, boolean gap, boolean doorOpen) {
        int set = (powered ? Trace.POWERED : 0)
                | (needed ? Trace.NEEDED : 0)
                | (gap ? Trace.GAP : 0)
                | (doorOpen ? Trace.DOOR_OPEN : 0);
        flags[rows] |= (byte) set;
        return this;
    }

    public void endRow() {
        rows++;
        if (rows == epochS.length) {
            grow(2 * rows);
        }
        flags[rows] = 0;
    }

    private void grow(int size) {
        epochS = Arrays.copyOf(epochS, size);
        closed = Arrays.copyOf(closed, size);
        holders = Arrays.copyOf(holders, size);
        trusts = Arrays.copyOf(trusts, size);
        flags = Arrays.copyOf(flags, size);
        growEach(numbers, size);
        growEach(powersW, size);
    }

    private static void growEach(float[][] columns, int size) {
        for (int i = 0; i < columns.length; i++) {
            columns[i] = Arrays.copyOf(columns[i], size);
        }
    }

    /** The trace; the builder is spent. */
    public Trace build() {
        return new Trace(rows, epochS, numbers, powersW, closed, holders, trusts, flags);
    }
}
