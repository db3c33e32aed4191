package rimeward.adapter.mqtt;

import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;

/** The real one. */
final class SemaphoreBell implements Bell {
    private final Semaphore rung = new Semaphore(0);
    private final LongSupplier nanoTime;

    SemaphoreBell(LongSupplier nanoTime) {
        this.nanoTime = nanoTime;
    }

    @Override
    public long nowMs() {
        return nanoTime.getAsLong() / 1_000_000;
    }

    @Override
    public void ring() {
        if (rung.availablePermits() == 0) { // one is enough; two at once do no harm
            rung.release();
        }
    }

    @Override
    public void await(long mostMs) throws InterruptedException {
        if (rung.tryAcquire(mostMs, TimeUnit.MILLISECONDS)) {
            rung.drainPermits();
        }
    }
}
