package rimeward.adapter.pi;

import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Asks what hangs on one bus in turn, for ever, on a thread of its own: whoever hangs there holds up nobody else. */
final class BusThread implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(BusThread.class);

    private final String name;
    private final long paceMs;
    private final List<Watched> all;
    private final CountDownLatch stop = new CountDownLatch(1);
    private boolean started;

    /**
     * Makes it; nothing is asked yet.
     *
     * @param paceMs rest between two rounds, ms
     */
    BusThread(String name, long paceMs, List<Watched> all) {
        this.name = name;
        this.paceMs = paceMs;
        this.all = List.copyOf(all);
    }

    void start() {
        started = true;
        Thread thread = new Thread(this::run, name);
        thread.setDaemon(true);
        thread.start();
    }

    private void run() {
        try {
            do {
                round();
            } while (!stop.await(paceMs, TimeUnit.MILLISECONDS));
        } catch (InterruptedException e) {
            LOG.warn("reading {} was interrupted and ends", name);
        } finally {
            all.forEach(Watched::letGo);
        }
    }

    /** Asks each once; a bug in one must not silence the others. */
    void round() {
        for (Watched each : all) {
            try {
                each.ask();
            } catch (RuntimeException e) {
                LOG.debug("asking on {} failed", name, e);
            }
        }
    }

    /** Asks the thread to end, which lets go; does not wait for one that hangs. */
    @Override
    public void close() {
        stop.countDown();
        if (!started) {
            all.forEach(Watched::letGo);
        }
    }
}
