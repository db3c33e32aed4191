package rimeward.winter;

import rimeward.core.Outcome;
import rimeward.sim.world.Truth;

/** How warm the benches truly were in the dark. */
final class NightMeans {
    private static final int HOUR_MS = 3_600_000;
    private static final int FROM_H = 18;
    private static final int TO_H = 6;

    private double sumC;
    private long looks;

    void look(Outcome outcome, Truth truth) {
        if (isNight(outcome.frame().tick().wall().epochMs())) {
            sumC += benchesC(truth);
            looks++;
        }
    }

    double benchesC() {
        return sumC / looks;
    }

    static boolean isNight(long epochMs) {
        long hour = Math.floorMod(epochMs / HOUR_MS, 24L);
        return hour >= FROM_H || hour < TO_H;
    }

    static double benchesC(Truth truth) {
        double sum = 0;
        for (int i = 0; i < truth.benches(); i++) {
            sum += truth.benchC(i);
        }
        return sum / truth.benches();
    }
}
