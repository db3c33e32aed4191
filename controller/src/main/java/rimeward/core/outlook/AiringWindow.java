package rimeward.core.outlook;

import java.util.ArrayList;
import java.util.List;
import rimeward.core.outlook.NightRun.Moment;

/**
 * A while in which outside air is drier than the air inside and warm enough, so that opening up dries for nothing. The limits are
 * those of {@code core.decision.Airing}, by which the fan goes; a test holds the two together.
 *
 * @param fromEpochS when it begins, s since 1970 UTC
 * @param toEpochS when it ends, or the plan does
 * @param drierKgPerKg how much drier outside is at best, kg of water per kg of air
 */
public record AiringWindow(long fromEpochS, long toEpochS, double drierKgPerKg) {
    static final double DRIER_KG_PER_KG = 0.0005;
    static final double CLEAR_OF_FLOOR_K = 3;

    /** A shorter one is not worth a walk, steps. Own choice. */
    private static final int LEAST_STEPS = 6;

    static List<AiringWindow> of(Tonight night, NightRun run) {
        List<AiringWindow> windows = new ArrayList<>();
        int begun = 0;
        double best = 0;
        for (int step = 0; step <= run.moments().size(); step++) {
            boolean helps =
                    step < run.moments().size() && helps(night, run.moments().get(step));
            if (helps) {
                best = StrictMath.max(best, run.moments().get(step).drierKgPerKg());
            } else {
                if (step - begun >= LEAST_STEPS) {
                    windows.add(new AiringWindow(night.epochS(begun), night.epochS(step), best));
                }
                begun = step + 1;
                best = 0;
            }
        }
        return windows;
    }

    private static boolean helps(Tonight night, Moment now) {
        double clearC = night.site().floorC() + CLEAR_OF_FLOOR_K;
        double coldestC =
                now.airC() - night.choices().coldCornerK() - night.choices().doubtK();
        return now.drierKgPerKg() > DRIER_KG_PER_KG && now.outsideC() >= clearC && coldestC >= clearC;
    }
}
