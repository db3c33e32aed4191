package rimeward.map.planted.service;

import java.time.Instant;
import java.util.function.LongSupplier;
import java.util.function.Supplier;

/** Faults: the clock read by a call, by a method reference and inside a lambda. */
public final class ReadsClock {
    private final LongSupplier nanos = System::nanoTime;
    private final Supplier<Instant> instants = () -> Instant.now();

    public long read() {
        return System.currentTimeMillis() + nanos.getAsLong() + instants.get().toEpochMilli();
    }
}
