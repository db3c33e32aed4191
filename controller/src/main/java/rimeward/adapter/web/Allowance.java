package rimeward.adapter.web;

/** So many at once, and then one more after each while. For one thread. */
final class Allowance {
    private final long everyMs;
    private final long mostMs;
    private long savedMs;
    private long lastMs = Long.MIN_VALUE;

    /**
     * @param most how many at once
     * @param everyMs after so long one more, ms
     */
    Allowance(int most, long everyMs) {
        this.everyMs = everyMs;
        mostMs = most * everyMs;
        savedMs = mostMs;
    }

    boolean isSpent(long nowMs) {
        if (lastMs != Long.MIN_VALUE) {
            savedMs = Math.min(mostMs, savedMs + Math.max(0, nowMs - lastMs));
        }
        lastMs = nowMs;
        return savedMs < everyMs;
    }

    void take(long nowMs) {
        savedMs -= isSpent(nowMs) ? 0 : everyMs;
    }
}
