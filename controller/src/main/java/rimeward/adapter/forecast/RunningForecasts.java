package rimeward.adapter.forecast;

import java.util.Optional;
import java.util.function.LongSupplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rimeward.core.outlook.Forecast;
import rimeward.port.Forecasts;

/** A source of forecasts with the thread that looks after it, until it is closed. */
public final class RunningForecasts implements Forecasts, AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(RunningForecasts.class);

    private static final long NS_PER_MS = 1_000_000;
    private static final long AFTER_BUG_MS = 3_600_000;

    private final Source source;
    private final Runnable atEnd;
    private final LongSupplier nanoTime;
    private final Object bell = new Object();
    private boolean hurried; // both under the bell
    private boolean stopped;
    private boolean troubled;

    /**
     * Makes it; nothing is looked for yet.
     *
     * @param atEnd lets go of whatever the source holds
     * @param nanoTime monotonic time, ns
     */
    RunningForecasts(Source source, Runnable atEnd, LongSupplier nanoTime) {
        this.source = source;
        this.atEnd = atEnd;
        this.nanoTime = nanoTime;
    }

    RunningForecasts start() {
        Source.Due first = source.first(nowMs());
        Thread thread = new Thread(() -> run(first), "forecast");
        thread.setDaemon(true);
        thread.start();
        return this;
    }

    private void run(Source.Due first) {
        try {
            Source.Due due = first;
            while (await(due)) {
                due = attempt();
                tell();
            }
        } catch (InterruptedException e) {
            LOG.warn("looking for forecasts was interrupted and ends");
        }
    }

    /** A bug must not end it: the next forecast may be one that it can bear. */
    private Source.Due attempt() {
        long nowMs = nowMs();
        try {
            return source.attempt(nowMs);
        } catch (RuntimeException | LinkageError e) {
            LOG.error("looking for a forecast failed in a way that nobody foresaw", e);
            return new Source.Due(nowMs + AFTER_BUG_MS, nowMs + AFTER_BUG_MS);
        }
    }

    /** Whether it goes on. Being asked for shortens the wait once, as far as the source allows. */
    private boolean await(Source.Due due) throws InterruptedException {
        synchronized (bell) {
            for (long leftMs = leftMs(due); !stopped && leftMs > 0; leftMs = leftMs(due)) {
                bell.wait(leftMs);
            }
            hurried = false;
            return !stopped;
        }
    }

    private long leftMs(Source.Due due) {
        return (hurried ? due.earliestMs() : due.usualMs()) - nowMs();
    }

    private void tell() {
        Optional<String> trouble = source.trouble();
        if (trouble.isPresent() && !troubled) {
            LOG.warn("{}", trouble.get());
        } else if (trouble.isEmpty() && troubled) {
            LOG.info("{} gives forecasts again", source.name());
        }
        troubled = trouble.isPresent();
    }

    private long nowMs() {
        return nanoTime.getAsLong() / NS_PER_MS;
    }

    @Override
    public Optional<Forecast> newest() {
        return source.newest();
    }

    @Override
    public void askAnew() {
        synchronized (bell) { // held for moments only
            hurried = true;
            bell.notifyAll();
        }
    }

    @Override
    public Optional<String> trouble() {
        return source.trouble();
    }

    /** Ends it, without waiting for an answer that is under way. */
    @Override
    public void close() {
        synchronized (bell) {
            stopped = true;
            bell.notifyAll();
        }
        atEnd.run();
    }
}
