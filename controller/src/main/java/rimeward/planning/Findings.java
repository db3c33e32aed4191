package rimeward.planning;

import rimeward.core.outlook.Alternatives;
import rimeward.core.outlook.Course;
import rimeward.core.outlook.NightPlan;
import rimeward.core.outlook.PastNight;
import rimeward.core.outlook.PlanPromise;
import rimeward.core.tunnel.Lesson;
import rimeward.core.tunnel.LossStanding;

/** Who hears of what the planner finds, on the planner's thread. */
public interface Findings {
    /** A newer plan of the coming night, and what plainer ways would take of it. */
    void planned(NightPlan plan, Alternatives others);

    /** What the plan promises, as it stood last before dark. */
    void promised(PlanPromise promise);

    /** What the nights so far teach of the tunnel. */
    void learned(Lesson lesson);

    /** Whether the tunnel has come to lose more or less heat than it did. */
    void heatLoss(LossStanding standing);

    /** What is expected of the air outside from now on. */
    void expects(Course course, long nowEpochS);

    /** What of that must outlast a restart, by its name. */
    void keeps(String name, String text);

    /** A night is over. */
    void reckoned(PastNight night);

    /** Something could not be done, or was not worth a value. */
    void says(String line);
}
