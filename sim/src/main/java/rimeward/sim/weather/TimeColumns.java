package rimeward.sim.weather;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAccessor;
import java.util.List;
import java.util.Locale;

/**
 * Which columns tell the time, and how. Written {@code "time_hour as iso"} or {@code "year, month, day, hour as y M d H"}:
 * the cells named before {@code as}, joined by a blank, follow the pattern after it (that of {@link DateTimeFormatter}).
 *
 * <p>{@code iso} takes a date, a date and time with {@code T} or a blank between, with or without seconds, with or without
 * an offset or {@code Z}. Times without offset are of the zone. A zone's clock that jumps back in autumn makes an hour
 * happen twice: the second time is meant once the first has been read.
 */
record TimeColumns(List<String> names, DateTimeFormatter format, ZoneId zone) {
    private static final DateTimeFormatter ISO =
            DateTimeFormatter.ofPattern("uuuu-MM-dd[['T'][ ]HH:mm[:ss][.SSS][XXX][X]]", Locale.ROOT);

    static TimeColumns parse(String text, ZoneId zone) {
        int as = text.lastIndexOf(" as ");
        if (as < 1) {
            throw new IllegalArgumentException("\"" + text
                    + "\" must say columns and format, as in \"time as iso\" or \"year, month, day, hour as y M d H\"");
        }
        var names = List.of(text.substring(0, as).trim().split(" *, *"));
        String format = text.substring(as + 4).trim();
        if (format.equals("iso")) {
            return new TimeColumns(names, ISO, zone);
        }
        try {
            return new TimeColumns(names, DateTimeFormatter.ofPattern(format, Locale.ROOT), zone);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(
                    "time pattern \"" + format + "\" is not understood: " + e.getMessage(), e);
        }
    }

    static ZoneId parseZone(String text) {
        try {
            return ZoneId.of(text);
        } catch (DateTimeException e) {
            throw new IllegalArgumentException(
                    "\"" + text
                            + "\" is no time zone; write UTC, an offset such as +01:00, or a name such as Europe/London",
                    e);
        }
    }

    /** Epoch second of the time told by a text; {@code previousEpochS} is that of the line before. */
    long epochS(String text, long previousEpochS) {
        TemporalAccessor told = format.parseBest(text, OffsetDateTime::from, LocalDateTime::from, LocalDate::from);
        if (told instanceof OffsetDateTime withOffset) {
            return withOffset.toEpochSecond();
        }
        return local(
                told instanceof LocalDateTime time ? time : LocalDate.from(told).atStartOfDay(), previousEpochS);
    }

    private long local(LocalDateTime time, long previousEpochS) {
        List<ZoneOffset> offsets = zone.getRules().getValidOffsets(time);
        if (offsets.isEmpty()) {
            throw new DateTimeException("the clocks of " + zone + " skipped it");
        }
        long first = time.toEpochSecond(offsets.get(0));
        boolean again = offsets.size() > 1 && first <= previousEpochS;
        return again ? time.toEpochSecond(offsets.get(1)) : first;
    }

    static String utc(long epochS) {
        return Instant.ofEpochSecond(epochS).toString();
    }
}
