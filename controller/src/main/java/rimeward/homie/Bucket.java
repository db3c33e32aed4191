package rimeward.homie;

/** Lets so many through at once and then one at a time, by a monotonic time that is handed in. */
final class Bucket {
    private final long mostMs;
    private final long everyMs;
    private long savedMs;
    private long lastMs;

    /**
     * @param most how many may come at once
     * @param everyMs after so long one more may, ms
     */
    Bucket(int most, long everyMs) {
        this.everyMs = everyMs;
        mostMs = most * everyMs;
        savedMs = mostMs;
    }

    /** Whether one more may pass now. */
    boolean passes(long nowMs) {
        savedMs = Math.min(mostMs, savedMs + Math.max(0, nowMs - lastMs));
        lastMs = nowMs;
        boolean passes = savedMs >= everyMs;
        savedMs -= passes ? everyMs : 0;
        return passes;
    }
}
