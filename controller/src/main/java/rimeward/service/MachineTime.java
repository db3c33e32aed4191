package rimeward.service;

/** The machine's clocks, handed in by whoever may read them. */
public interface MachineTime {
    /** Monotonic time, ns; goes on while the wall clock is set. */
    long monotonicNs();

    /** Time of day, ms since 1970 UTC, right or wrong. */
    long wallMs();

    /** Whether the network has set the wall clock since the machine was switched on. */
    boolean isWallSet();

    /** Waits; may return early. */
    void sleepNs(long forNs);
}
