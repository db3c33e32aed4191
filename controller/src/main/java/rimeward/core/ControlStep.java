package rimeward.core;

import rimeward.core.outlook.Outlook;
import rimeward.core.reading.Frame;
import rimeward.site.Site;

/** What the control loop drives: one tick as a pure function. */
public interface ControlStep {
    /** The state before the first tick, with nothing known of the past. */
    ControlState start();

    /** The same control of the same machines with other limits; it goes on from the state that this one left. */
    ControlStep at(Site site);

    /** One tick. */
    Stepped step(ControlState was, Frame frame, Outlook outlook);
}
