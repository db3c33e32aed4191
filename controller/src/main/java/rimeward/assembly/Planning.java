package rimeward.assembly;

import java.util.Optional;
import java.util.concurrent.Semaphore;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;
import rimeward.core.Stepped;
import rimeward.core.order.HandedForecast;
import rimeward.core.reading.WallTime;
import rimeward.planning.Planner;

/**
 * The planner on a thread of its own. The control loop hands each decision over and never waits; while the planner is busy only the newest
 * counts, and whatever becomes of it control goes on.
 */
final class Planning implements AutoCloseable {
    /** More often nothing is due, s of the tunnel's time. Own choice. */
    private static final long LOOK_S = 60;

    /** An orderly end does not wait for more than a look in hand. */
    private static final long FAREWELL_MS = 3_000;

    private final Planner planner;
    private final Audience audience;
    private final Thread thread;
    private final Semaphore bell = new Semaphore(0);
    private final AtomicReference<Optional<HandedForecast>> handed = new AtomicReference<>(Optional.empty());
    private volatile @Nullable Stepped newest;
    private volatile long lookedS = Long.MIN_VALUE / 2;
    private volatile boolean asked;
    private volatile boolean stopping;

    private Planning(Planner planner, Audience audience) {
        this.planner = planner;
        this.audience = audience;
        thread = new Thread(this::run, "planner");
        thread.setDaemon(true);
    }

    static Planning start(Planner planner, Audience audience) {
        Planning planning = new Planning(planner, audience);
        planning.thread.start();
        return planning;
    }

    /** On the loop's thread: notes it, and rings where a look is due. */
    void decided(Stepped stepped) {
        newest = stepped;
        WallTime wall = stepped.outcome().frame().tick().wall();
        if (wall.trusted() && (wall.epochS() >= lookedS + LOOK_S || wall.epochS() < lookedS)) {
            ring();
        }
    }

    /** The grower wants the night planned now. */
    void ask() {
        asked = true;
        lookedS = Long.MIN_VALUE / 2;
    }

    /** Monotonic time of the last decision, ms; 0 before the first. */
    long elapsedMs() {
        Stepped stepped = newest;
        return stepped == null ? 0 : stepped.outcome().frame().tick().elapsedMs();
    }

    /** What the grower handed over, or took back. */
    void hand(HandedForecast forecast) {
        handed.set(Optional.of(forecast));
        lookedS = Long.MIN_VALUE / 2;
    }

    private void ring() {
        if (bell.availablePermits() == 0) {
            bell.release();
        }
    }

    private void run() {
        try {
            while (!stopping) {
                bell.acquire();
                look();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (Error e) { // out of memory, perhaps: control must not care, and the log must know
            audience.says("the planner ends, and control goes on without plans: " + e);
        }
    }

    private void look() {
        Stepped stepped = newest;
        if (stepped == null || stopping) {
            return;
        }
        lookedS = stepped.outcome().frame().tick().wall().epochS();
        boolean now = asked;
        asked = false;
        handed.getAndSet(Optional.empty()).ifPresent(planner::handed);
        try {
            planner.look(stepped, now);
        } catch (RuntimeException e) {
            audience.says("the night could not be planned, and control goes on without: " + e);
        }
    }

    /** Ends after the look in hand; one that takes longer ends with the process. */
    @Override
    public void close() {
        stopping = true;
        bell.release();
        try {
            thread.join(FAREWELL_MS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
