package rimeward.sim.run;

import rimeward.core.guard.Holder;
import rimeward.core.judgement.Trust;
import rimeward.site.RelaySet;

/**
 * How one run went: a row at every step of time, and one more at every change of a relay, in order of time. Held in columns, because a
 * winter has a quarter of a million rows. Filled by a {@link TraceBuilder}, then only read.
 */
public final class Trace {
    static final byte POWERED = 1;
    static final byte JUDGED = 2;
    static final byte NEEDED = 4;
    static final byte GAP = 8;
    static final byte DOOR_OPEN = 16;

    private static final Holder[] HOLDERS = Holder.values();
    private static final Trust[] TRUSTS = Trust.values();

    private final int rows;
    private final long[] epochS;
    private final float[][] numbers;
    private final float[][] powersW;
    private final short[] closed;
    private final byte[] holders;
    private final byte[] trusts;
    private final byte[] flags;

    Trace(
            int rows,
            long[] epochS,
            float[][] numbers,
            float[][] powersW,
            short[] closed,
            byte[] holders,
            byte[] trusts,
            byte[] flags) {
        this.rows = rows;
        this.epochS = epochS;
        this.numbers = numbers;
        this.powersW = powersW;
        this.closed = closed;
        this.holders = holders;
        this.trusts = trusts;
        this.flags = flags;
    }

    public int rows() {
        return rows;
    }

    /** Number of machines, in the site's order. */
    public int machines() {
        return powersW.length;
    }

    /** Time of a row, s since 1970 UTC. */
    public long epochS(int row) {
        return epochS[row];
    }

    /** A number, in the unit of the quantity's name. {@link Quantity#JUDGED_C} means something only where {@link #hasJudged}. */
    @SuppressWarnings("EnumOrdinal") // columns stand in the enum's order within this package
    public double at(Quantity quantity, int row) {
        return numbers[quantity.ordinal()][row];
    }

    /** Electric power of one machine, W. */
    public double powerW(int machine, int row) {
        return powersW[machine][row];
    }

    /** Relays as commanded, or as they fell without a controller. */
    public RelaySet closed(int row) {
        return RelaySet.of(closed[row]);
    }

    /** Who holds the warm duty, as the controller says. */
    public Holder holder(int row) {
        return HOLDERS[holders[row]];
    }

    /** How far the controller believes its sensors. */
    public Trust trust(int row) {
        return TRUSTS[trusts[row]];
    }

    /** Whether there was mains power. Without, nothing runs, and holder and trust are those of the last tick before. */
    public boolean isPowered(int row) {
        return (flags[row] & POWERED) != 0;
    }

    /** Whether the controller knew an inside temperature. */
    public boolean hasJudged(int row) {
        return (flags[row] & JUDGED) != 0;
    }

    /** Whether, in truth, the coldest bench was near enough to the floor that somebody had to hold the warm duty. */
    public boolean isNeeded(int row) {
        return (flags[row] & NEEDED) != 0;
    }

    /** Whether, in truth, the warm duty was needed, heat was in hand, and nobody gave it. */
    public boolean isGap(int row) {
        return (flags[row] & GAP) != 0;
    }

    public boolean isDoorOpen(int row) {
        return (flags[row] & DOOR_OPEN) != 0;
    }
}
