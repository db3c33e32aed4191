package rimeward.adapter.mqtt;

import java.util.SplittableRandom;

/**
 * How long to rest between attempts: twice as long each time, up to a limit, a random half of it taken off so that two hundred tunnels do not
 * come back to a broker at the same moment. An attempt's own limit and the longest rest together stay under a minute.
 */
final class Rests {
    private static final long FIRST_MS = 1_000;
    static final long LONGEST_MS = 30_000;

    private final SplittableRandom chance; // Random begins alike for names that are alike
    private long nextMs = FIRST_MS;

    /** @param name of the stream of chance; the same name gives the same rests */
    Rests(String name) {
        chance = new SplittableRandom(name.hashCode());
    }

    long nextMs() {
        long restMs = (long) ((1 + chance.nextDouble()) / 2 * nextMs);
        nextMs = Math.min(LONGEST_MS, 2 * nextMs);
        return restMs;
    }

    void beginAnew() {
        nextMs = FIRST_MS;
    }
}
