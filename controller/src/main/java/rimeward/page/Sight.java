package rimeward.page;

import java.util.List;
import org.jspecify.annotations.Nullable;
import rimeward.core.Outcome;
import rimeward.core.outlook.NightPlan;
import rimeward.core.outlook.PastNight;
import rimeward.core.tunnel.Lesson;
import rimeward.record.SavedState;
import rimeward.site.Site;

/**
 * What there is to show at one moment.
 *
 * @param site as the settings have it; the floor that is held stands in the outcome
 * @param outcome of the newest tick
 * @param ageS how long ago that was by the machine's own clock, s
 * @param alerts that stand, the worst first
 * @param saved the newest state that was kept; null before the first
 * @param planned the newest; null before the first
 * @param past the night that ended last since the service started; null before the first
 * @param lesson the newest; null before the first
 * @param answer the newest; null before the first
 * @param startedEpochS when the service started, s since 1970 UTC
 */
public record Sight(
        Site site,
        Outcome outcome,
        double ageS,
        List<StandingAlert> alerts,
        @Nullable SavedState saved,
        @Nullable Planned planned,
        @Nullable PastNight past,
        @Nullable Lesson lesson,
        @Nullable Answered answer,
        String version,
        long startedEpochS,
        boolean recordFailing,
        boolean brokerFailing) {

    /** What became of an order, and when. */
    public record Answered(long epochS, boolean granted, String text) {}

    long epochS() {
        return outcome.frame().tick().wall().epochS();
    }

    /** The plan while its night is not over; null where there is none. */
    @Nullable
    Planned planOfNight() {
        boolean trusted = outcome.frame().tick().wall().trusted();
        return planned != null && trusted && epochS() < planned.plan().endEpochS() ? planned : null;
    }

    /** The same without what plainer ways would take. */
    @Nullable
    NightPlan coming() {
        Planned now = planOfNight();
        return now == null ? null : now.plan();
    }
}
