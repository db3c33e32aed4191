package rimeward.adapter.mqtt;

/** Wakes the line's thread, and is its only clock. */
interface Bell {
    /** Monotonic time, ms. */
    long nowMs();

    /** From any thread. */
    void ring();

    /** Waits until it has rung since the last wait, or for so long. */
    void await(long mostMs) throws InterruptedException;
}
