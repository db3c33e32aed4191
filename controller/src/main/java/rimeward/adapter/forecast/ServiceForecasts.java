package rimeward.adapter.forecast;

import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Supplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rimeward.core.outlook.Forecast;
import rimeward.core.reading.WallTime;

/**
 * Forecasts of a weather service, asked for as its terms want it (api.met.no/doc/TermsOfService): not before the last answer expires, with
 * If-Modified-Since, and ever more seldom while it fails.
 */
final class ServiceForecasts implements Source {
    private static final Logger LOG = LoggerFactory.getLogger(ServiceForecasts.class);

    /** A service that fails no longer than this is not worth a person's time while its last forecast is good, ms. Own choice. */
    private static final long PATIENCE_MS = 2 * 3_600_000;

    private static final int OK = 200;
    private static final int DEPRECATED = 203; // so the service uses it (api.met.no/doc/StatusCodes)
    private static final int NOT_MODIFIED = 304;
    private static final int UNAUTHORIZED = 401;
    private static final int FORBIDDEN = 403;
    private static final int TIMEOUT = 408;
    private static final int TOO_MANY = 429;

    private final String source;
    private final Wire wire;
    private final Waits waits;
    private final Shelf shelf;
    private Optional<String> lastModified = Optional.empty();
    private boolean failing;
    private long failingSinceMs;
    private boolean deprecated;

    ServiceForecasts(String source, Wire wire, Waits waits, Supplier<WallTime> wall) {
        this.source = source;
        this.wire = wire;
        this.waits = waits;
        shelf = new Shelf(source, wall);
    }

    @Override
    public String name() {
        return source;
    }

    @Override
    public Due first(long nowMs) {
        return waits.first(nowMs);
    }

    @Override
    public Due attempt(long nowMs) {
        if (!shelf.knowsTime()) { // certificates are judged by it too
            return waits.untilClockIsSet(nowMs);
        }
        try {
            return answered(wire.ask(lastModified), nowMs);
        } catch (NoReply e) {
            return failed(nowMs, e.why(), OptionalLong.empty());
        }
    }

    private Due answered(Reply reply, long nowMs) {
        return switch (reply.status()) {
            case OK, DEPRECATED -> came(reply, nowMs);
            case NOT_MODIFIED -> {
                shelf.confirm();
                yield held(reply, nowMs);
            }
            case UNAUTHORIZED, FORBIDDEN ->
                refused(
                        nowMs,
                        reply,
                        "It refuses to answer us (" + reply.status()
                                + "): it does not take [forecast] contact for somebody it"
                                + " could reach, or has shut this address out. Put your own e-mail or web address there, restart,"
                                + " and read its terms of service.");
            case TOO_MANY ->
                failed(
                        nowMs,
                        "It says that it is asked too often (429) and is left alone for longer.",
                        waitOf429(reply));
            case TIMEOUT -> failed(nowMs, "It says that we were too slow (408).", reply.retryAfterS());
            default -> other(reply, nowMs);
        };
    }

    /** Without a word about how long, the longest of ours, and nobody may shorten it. */
    private static OptionalLong waitOf429(Reply reply) {
        return reply.retryAfterS().isPresent() ? reply.retryAfterS() : OptionalLong.of(Waits.USUAL_MS / 1000);
    }

    private Due other(Reply reply, long nowMs) {
        if (reply.status() >= 400 && reply.status() < 500) {
            return refused(
                    nowMs,
                    reply,
                    "It does not understand the question (" + reply.status()
                            + "). Look at url, latitude_deg and longitude_deg in [forecast].");
        }
        return failed(nowMs, "It has trouble of its own (" + reply.status() + ").", reply.retryAfterS());
    }

    private Due came(Reply reply, long nowMs) {
        if (reply.status() == DEPRECATED && !deprecated) {
            deprecated = true;
            LOG.warn(
                    "{} says that this version of its forecast is new or will soon be taken away (203): look for a newer Rimeward,"
                            + " or name another url in [forecast]",
                    source);
        }
        try {
            shelf.put(ServiceText.read(reply.body(), source));
            lastModified = reply.lastModified();
            return held(reply, nowMs);
        } catch (Unreadable e) {
            return failed(nowMs, "What it answers is no forecast: " + e.why() + ".", reply.freshForS());
        }
    }

    private Due held(Reply reply, long nowMs) {
        failing = false;
        return waits.answered(nowMs, reply.freshForS());
    }

    private Due failed(long nowMs, String why, OptionalLong retryAfterS) {
        if (!failing) {
            failing = true;
            failingSinceMs = nowMs;
        }
        shelf.hinder(why + " It is tried again and again.", nowMs - failingSinceMs >= PATIENCE_MS);
        return waits.failed(nowMs, retryAfterS);
    }

    private Due refused(long nowMs, Reply reply, String why) {
        shelf.hinder(why, true);
        return waits.refused(nowMs, reply.retryAfterS());
    }

    @Override
    public Optional<Forecast> newest() {
        return shelf.newest();
    }

    @Override
    public Optional<String> trouble() {
        return shelf.trouble();
    }
}
