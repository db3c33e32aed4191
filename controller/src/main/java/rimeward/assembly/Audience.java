package rimeward.assembly;

import rimeward.alert.Alert;
import rimeward.core.Stepped;
import rimeward.core.order.Answer;
import rimeward.core.outlook.Alternatives;
import rimeward.core.outlook.NightPlan;
import rimeward.core.outlook.PastNight;
import rimeward.core.tunnel.Lesson;

/** Who reads along while the service runs: a log, or somebody at a screen. */
public interface Audience {
    /** What the service says of itself. */
    void says(String line);

    /** After each decision, on the loop's thread. */
    void decided(Stepped stepped);

    /** What became of an order, on the loop's thread. */
    void answered(Answer answer);

    /** A newer plan of the coming night, and what plainer ways would take of it. On the planner's thread, as the next three. */
    default void planned(NightPlan plan, Alternatives others) {}

    /** The plan at dusk, once an evening. */
    default void promised(NightPlan plan) {}

    /** What the nights so far teach of the tunnel. */
    default void learned(Lesson lesson) {}

    /** A night is over. */
    default void reckoned(PastNight night) {}

    /** An alert that is in the record by now, or cannot be recorded. On the record's own thread. */
    void told(Alert alert);
}
