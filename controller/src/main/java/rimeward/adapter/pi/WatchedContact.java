package rimeward.adapter.pi;

import java.util.function.LongSupplier;
import rimeward.site.InputLine;

/** A contact on a line, looked at again and again. */
final class WatchedContact implements Watched {
    static final long PACE_MS = 250;

    /** A bare opto-coupler on the mains passes pulses, not a level: one comes within a period of 50 Hz or 60 Hz, ms. */
    private static final long PERIOD_MS = 25;

    /** The kernel keeps sixteen edges. */
    private static final int MOST_KEPT = 32;

    private final HeldLine held;
    private final InputLine at;
    private final boolean onMains;
    private final ContactCell cell;
    private final LongSupplier nanoTime;

    /** Makes one; {@code onMains} where an edge within a mains period counts as active too: the line is held with edges then. */
    WatchedContact(HeldLine held, InputLine at, boolean onMains, ContactCell cell, LongSupplier nanoTime) {
        this.held = held;
        this.at = at;
        this.onMains = onMains;
        this.cell = cell;
        this.nanoTime = nanoTime;
    }

    @Override
    public void ask() {
        held.use(() -> {}, this::look, cell::failed);
    }

    private void look(TakenLine line) {
        boolean active = onMains ? isActiveInPeriod(line) : isActive(line);
        cell.put(active, nanoTime.getAsLong());
    }

    private boolean isActive(TakenLine line) {
        return line.isHigh() != at.activeLow();
    }

    private boolean isActiveInPeriod(TakenLine line) {
        int old = 0;
        while (old < MOST_KEPT && line.nextEdgeNs(0).isPresent()) {
            old++; // edges since the last look say nothing of now
        }
        return isActive(line) || line.nextEdgeNs(PERIOD_MS).isPresent();
    }

    @Override
    public void letGo() {
        held.letGo();
    }
}
