package rimeward.adapter.pi;

import java.util.function.LongSupplier;
import rimeward.site.InputLine;

/** A contact on a line, looked at again and again. */
final class WatchedContact implements Watched {
    static final long PACE_MS = 250;

    /** A bare opto-coupler on the mains passes pulses, not a level: a full period of 50 Hz and of 60 Hz is looked at, ms. */
    private static final int PERIOD_MS = 21;

    private static final int STEP_MS = 1;

    private final HeldLine held;
    private final InputLine at;
    private final boolean onMains;
    private final ContactCell cell;
    private final LongSupplier nanoTime;

    /** Makes one; {@code onMains} where any sign of activity within a mains period counts as active. */
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
        for (int passedMs = 0; passedMs < PERIOD_MS; passedMs += STEP_MS) {
            if (isActive(line)) {
                return true;
            }
            try {
                Thread.sleep(STEP_MS);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                return false;
            }
        }
        return false;
    }

    @Override
    public void letGo() {
        held.letGo();
    }
}
