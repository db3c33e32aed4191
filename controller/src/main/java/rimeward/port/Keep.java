package rimeward.port;

import rimeward.core.outlook.PastNight;
import rimeward.core.outlook.PlanPromise;
import rimeward.record.SavedState;

/** Where control's own state survives a restart and a power cut. */
public interface Keep {
    /** Takes the newest state; it must be on the disk soon, whatever becomes of the power. Never blocks and never throws. */
    void keep(SavedState state);

    /** Takes what a plan promises, so that the night can hold it to account; a later one for the same evening replaces it. Never blocks and never throws. */
    default void keep(PlanPromise plan) {}

    /** Takes what other ways would have taken of a night that was. Never blocks and never throws. */
    default void keep(PastNight night) {}

    /** Takes what was learned, in place of what was kept under the same name. Never blocks and never throws. */
    default void keepLearned(String name, String text) {}
}
