package rimeward.adapter.pi;

import java.util.OptionalLong;
import java.util.function.LongSupplier;

/** A meter's pulse output on a line: counts the edges, each at the time that the kernel gave it. */
final class WatchedPulses implements Watched {
    static final long PACE_MS = 50;
    private static final long WAIT_MS = 500;
    private static final int MOST_AT_ONCE = 64;

    /** IEC 62053-31, 4.1.3: a pulse lasts 30 ms at least, so does the pause after it, and bounce less than 5 ms. */
    private static final long CLOSEST_NS = 30_000_000;

    private static final long CLOCKS_APART_NS = 60_000_000_000L;

    private final HeldLine held;
    private final PulsePower power;
    private final LongSupplier nanoTime;
    private long lastNs;

    WatchedPulses(HeldLine held, PulsePower power, LongSupplier nanoTime) {
        this.held = held;
        this.power = power;
        this.nanoTime = nanoTime;
    }

    @Override
    public void ask() {
        held.use(this::begin, this::listen, power::failed);
    }

    private void begin() {
        long nowNs = nanoTime.getAsLong();
        lastNs = nowNs - CLOSEST_NS;
        power.begin(nowNs);
    }

    private void listen(TakenLine line) {
        for (int i = 0; i < MOST_AT_ONCE; i++) {
            OptionalLong edgeNs = line.nextEdgeNs(WAIT_MS);
            long nowNs = nanoTime.getAsLong();
            edgeNs.ifPresent(atNs -> count(atNs, nowNs));
            power.asked(nowNs);
            if (edgeNs.isEmpty()) {
                return;
            }
        }
    }

    /** Kernels before 5.7 stamp edges with another clock (from memory): then the time of reading has to do. */
    private void count(long edgeNs, long nowNs) {
        long atNs = edgeNs <= nowNs && nowNs - edgeNs < CLOCKS_APART_NS ? edgeNs : nowNs;
        if (atNs - lastNs >= CLOSEST_NS) {
            lastNs = atNs;
            power.pulses(1, atNs);
        }
    }

    @Override
    public void letGo() {
        held.letGo();
    }
}
