package rimeward.service;

import java.util.Optional;
import rimeward.core.reading.Tick;
import rimeward.port.Ticker;

/**
 * Beats by monotonic time, on a grid that does not drift. After a stall it takes up the grid again with one tick, and makes up for
 * none. {@link #stop} may be called from any thread.
 */
public final class BeatTicker implements Ticker {
    public static final long BEAT_MS = 5000;
    private static final long BEAT_NS = BEAT_MS * 1_000_000;

    private final MachineTime time;
    private final WallJudge wall = new WallJudge();
    private final Runnable cycleDone;
    private final long startNs;
    private final long startElapsedMs;
    private long dueNs;
    private long number;
    private boolean late;
    private volatile boolean stopped;

    /**
     * Begins now.
     *
     * @param startElapsedMs what the first tick counts from: 0, or where the state before a restart left off
     * @param cycleDone called when a whole cycle is over, never before
     */
    public BeatTicker(MachineTime time, long startElapsedMs, Runnable cycleDone) {
        this.time = time;
        this.startElapsedMs = startElapsedMs;
        this.cycleDone = cycleDone;
        startNs = time.monotonicNs();
        dueNs = startNs;
    }

    @Override
    public Optional<Tick> next() {
        if (number > 0) {
            cycleDone.run();
        }
        for (long leftNs = dueNs - time.monotonicNs(); leftNs > 0 && !stopped; leftNs = dueNs - time.monotonicNs()) {
            time.sleepNs(leftNs);
        }
        if (stopped) {
            return Optional.empty();
        }
        long nowNs = time.monotonicNs();
        long missed = (nowNs - dueNs) / BEAT_NS;
        late = missed > 0;
        dueNs += (missed + 1) * BEAT_NS;
        long sinceMs = (nowNs - startNs) / 1_000_000;
        return Optional.of(
                new Tick(number++, startElapsedMs + sinceMs, wall.judge(sinceMs, time.wallMs(), time.isWallSet())));
    }

    /** No tick follows the one that is at work; the caller also wakes the sleeper. */
    public void stop() {
        stopped = true;
    }

    @Override
    public boolean isLate() {
        return late;
    }

    @Override
    public boolean hasWallJumped() {
        return wall.hasJumped();
    }
}
