package rimeward.homie;

import java.util.List;
import rimeward.core.outlook.Course;
import rimeward.core.outlook.NightPlan;
import rimeward.core.outlook.PlanChoices;
import rimeward.core.outlook.PlanStart;
import rimeward.core.tunnel.TunnelEstimate;
import rimeward.site.Site;

/** A plan for {@link OddSites}, made as their frames begin. */
final class OddPlans {
    static final long MADE_S = 1_764_000_000;

    private OddPlans() {}

    /** Of a night of so many hours. */
    static NightPlan of(Site site, int hours) {
        Course course = new Course(
                new Course.Basis.Guess(),
                List.of(new Course.Step(MADE_S, 1, 1, 0), new Course.Step(MADE_S + hours * 3600L, -4.5, 2, -5)));
        return NightPlan.of(
                site, TunnelEstimate.assumed(site), course, PlanStart.of(MADE_S, 6), PlanChoices.usual(site));
    }
}
