package rimeward.adapter.forecast;

import java.util.OptionalLong;
import java.util.SplittableRandom;
import rimeward.adapter.forecast.Source.Due;

/**
 * When to ask a service again: not before its answer expires, never twice in ten minutes, and by chance a little later, so that many tunnels do
 * not ask in the same second (api.met.no/doc/TermsOfService). After failures twice as long each time, up to an hour. Times ms.
 */
final class Waits {
    /** Never twice within this. Own choice. */
    static final long LEAST_MS = 600_000;

    /** So long an answer holds that does not say, and so far apart are attempts that go on failing. Own choice, as all here. */
    static final long USUAL_MS = 3_600_000;

    /** An answer that holds longer is a mistake: the forecast would be too old before it. */
    static final long MOST_MS = Shelf.STALE_S * 1000;

    /** After a refusal somebody has to change something. */
    static final long REFUSED_MS = 3 * 3_600_000;

    private static final long SPREAD_MS = 300_000;

    /** At a start, so that a service that is started again and again does not ask each time. */
    private static final long FIRST_MS = 30_000;

    private static final long CLOCK_MS = 30_000;

    private final SplittableRandom chance; // Random begins alike for names that are alike
    private long afterFailureMs = LEAST_MS;

    /** @param name of the stream of chance; the same name gives the same waits */
    Waits(String name) {
        chance = new SplittableRandom(name.hashCode());
    }

    Due first(long nowMs) {
        long atMs = nowMs + FIRST_MS;
        return new Due(atMs, atMs + byChance(FIRST_MS));
    }

    Due untilClockIsSet(long nowMs) {
        return new Due(nowMs + CLOCK_MS, nowMs + CLOCK_MS);
    }

    Due answered(long nowMs, OptionalLong freshForS) {
        afterFailureMs = LEAST_MS;
        long heldMs = bounded(freshForS, USUAL_MS);
        return new Due(nowMs + heldMs, nowMs + heldMs + byChance(SPREAD_MS));
    }

    /** @param retryAfterS what the service asks for, if it does: then nobody may shorten it */
    Due failed(long nowMs, OptionalLong retryAfterS) {
        long leastMs = bounded(retryAfterS, LEAST_MS);
        long atMs = nowMs + Math.max(leastMs, afterFailureMs);
        afterFailureMs = Math.min(USUAL_MS, 2 * afterFailureMs);
        return new Due(nowMs + leastMs, atMs + byChance(SPREAD_MS));
    }

    Due refused(long nowMs, OptionalLong retryAfterS) {
        long atMs = nowMs + Math.max(REFUSED_MS, bounded(retryAfterS, LEAST_MS));
        return new Due(atMs, atMs + byChance(SPREAD_MS));
    }

    private static long bounded(OptionalLong saidS, long otherwiseMs) {
        long most = MOST_MS / 1000;
        long saidMs = saidS.isPresent() ? Math.min(most, Math.max(0, saidS.getAsLong())) * 1000 : otherwiseMs;
        return Math.max(LEAST_MS, saidMs);
    }

    private long byChance(long mostMs) {
        return (long) (chance.nextDouble() * mostMs);
    }
}
