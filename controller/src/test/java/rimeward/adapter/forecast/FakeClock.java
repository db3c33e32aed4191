package rimeward.adapter.forecast;

import java.util.concurrent.atomic.AtomicLong;
import rimeward.core.reading.WallTime;

/** Clocks that go only when told to; from any thread. */
final class FakeClock {
    private static final long BOOT_MS = 7_000;

    private final AtomicLong nowMs = new AtomicLong(BOOT_MS);
    private volatile long offsetMs;
    private volatile boolean set = true;

    /** It is so late now, s since 1970 UTC. */
    FakeClock(long epochS) {
        offsetMs = epochS * 1000 - BOOT_MS;
    }

    long nowMs() {
        return nowMs.get();
    }

    long nanos() {
        return nowMs.get() * 1_000_000;
    }

    WallTime wall() {
        return new WallTime(nowMs.get() + offsetMs, set);
    }

    void pass(double hours) {
        nowMs.addAndGet((long) (hours * 3_600_000));
    }

    void passUntil(long atMs) {
        nowMs.set(Math.max(atMs, nowMs.get()));
    }

    void isSet(boolean now) {
        set = now;
    }
}
