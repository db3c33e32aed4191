package rimeward.core;

import rimeward.core.outlook.Outlook;
import rimeward.core.reading.Frame;

/** What the control loop drives: one tick as a pure function. */
public interface ControlStep {
    /** The state before the first tick, with nothing known of the past. */
    ControlState start();

    /** One tick. */
    Stepped step(ControlState was, Frame frame, Outlook outlook);
}
