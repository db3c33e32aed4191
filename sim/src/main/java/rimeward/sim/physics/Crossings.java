package rimeward.sim.physics;

import org.jspecify.annotations.Nullable;

/** Finds which contact turns first within a step, and when; for one thread. */
final class Crossings {
    private double share;
    private @Nullable Hysteresis first;
    private boolean refining;
    private double from;
    private double at;
    private double to;

    /** Begins to look at a whole step. */
    void clear() {
        share = 1;
        first = null;
        refining = false;
    }

    /** Shows what a contact feels at the beginning and at the end of the step that was tried. */
    void offer(Hysteresis contact, double start, double end) {
        if (refining) {
            at = contact == first ? end : at;
            return;
        }
        double crossing = contact.crossing(start, end);
        if (crossing < share || (crossing == 1 && first == null)) {
            share = crossing;
            first = contact;
            from = start;
            to = end;
        }
    }

    boolean isAny() {
        return first != null;
    }

    /** Part of the step until the first contact turns, 1 if none does. */
    double share() {
        return share;
    }

    /** Begins to look at the step cut at {@link #share}; a straight line had placed the cut, and the contact may not be quite there. */
    void refine() {
        refining = true;
    }

    /** The better part: a parabola through beginning, cut and end tells how fast the contact approached its turn. */
    double refinedShare() {
        if (first == null || share >= 1) {
            return share;
        }
        double slope = (1 - share) * (at - from) / share + share * (to - at) / (1 - share);
        double missed = (first.turnsAt() - at) / slope;
        return slope == 0 ? share : Math.max(share / 2, Math.min(1, share + missed));
    }

    /** Turns the first contact, if any. */
    void flip() {
        if (first != null) {
            first.flip();
            first = null;
        }
    }
}
