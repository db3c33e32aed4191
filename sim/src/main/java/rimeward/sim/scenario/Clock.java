package rimeward.sim.scenario;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import rimeward.adapter.config.Kinds;
import rimeward.adapter.config.TableReader;
import rimeward.sim.weather.Span;
import rimeward.sim.weather.WeatherSeries;

/** Reads {@code [time]}: when a replay starts, by which clock, how long it is, and in which steps. */
record Clock(LocalDateTime start, long lengthS, ZoneOffset offset, int tickS, int traceEveryS) {
    private static final int USUAL_TICK_S = 5;
    private static final int USUAL_TRACE_S = 60;

    static Clock read(TableReader table) {
        LocalDateTime start = table.get("start", Times.dateTime());
        Duration length = table.get("length", Kinds.duration());
        ZoneOffset offset = table.get("utc_offset", Times.offset());
        int tickS = table.get("tick_s", Kinds.whole(1, 60), USUAL_TICK_S);
        int traceEveryS = table.get("trace_every_s", Kinds.whole(1, 3600), USUAL_TRACE_S);
        if (table.isSound() && traceEveryS % tickS != 0) {
            table.fault("trace_every_s", "is not a whole number of ticks of " + tickS + " s", "make it one");
        }
        if (table.isSound() && length.toSeconds() < tickS) {
            table.fault("length", "is shorter than one tick", "give it at least an hour");
        }
        return new Clock(start, length.toSeconds(), offset, tickS, traceEveryS);
    }

    long startEpochS() {
        return start.toEpochSecond(offset);
    }

    Span span() {
        return new Span(startEpochS(), startEpochS() + lengthS);
    }

    /** By the command line: other weather is used whole unless a start or an end is asked for. */
    Clock with(Overrides asked) throws BadInput {
        LocalDateTime from = asked.from() == null ? start : asked.from();
        LocalDateTime usualEnd = (asked.from() == null ? start : from).plusSeconds(lengthS);
        return between(from, asked.until() == null ? usualEnd : asked.until());
    }

    /** The same, of other weather. */
    Clock with(Overrides asked, WeatherSeries other) throws BadInput {
        LocalDateTime from = asked.from() == null ? local(other.startEpochS()) : asked.from();
        return between(from, asked.until() == null ? local(other.endEpochS()) : asked.until());
    }

    private LocalDateTime local(long epochS) {
        return LocalDateTime.ofEpochSecond(epochS, 0, offset);
    }

    private Clock between(LocalDateTime from, LocalDateTime until) throws BadInput {
        long seconds = Duration.between(from, until).toSeconds() / tickS * tickS;
        if (seconds < tickS) {
            throw new BadInput(
                    "a replay from " + from + " to " + until + " has no length; ask for an end after the start");
        }
        return new Clock(from, seconds, offset, tickS, traceEveryS);
    }
}
