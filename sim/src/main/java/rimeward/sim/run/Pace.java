package rimeward.sim.run;

/** How fast simulated time may go. The clock behind it belongs to the command line. */
public interface Pace {
    /** Waits until this much simulated time, s since the start, may have passed; false when there shall be no more. */
    boolean reach(double simulatedS);
}
