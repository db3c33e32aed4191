package rimeward.adapter.forecast;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** What the headers of an answer say of time (RFC 9110, RFC 9111), measured by the service's own clock. */
final class HttpDates {
    private static final Pattern SECONDS = Pattern.compile("\\d{1,9}");

    private HttpDates() {}

    /** @param header the value of a header by its name, null where there is none */
    static Reply reply(int status, String body, Function<String, @Nullable String> header) {
        OptionalLong dateS = epochS(header.apply("Date"));
        return new Reply(
                status,
                body,
                lastModified(header.apply("Last-Modified")),
                freshForS(header.apply("Expires"), dateS),
                retryAfterS(header.apply("Retry-After"), dateS));
    }

    /** Only a sound one is worth sending back. */
    private static Optional<String> lastModified(@Nullable String value) {
        return value != null && epochS(value).isPresent() ? Optional.of(value) : Optional.empty();
    }

    private static OptionalLong freshForS(@Nullable String expires, OptionalLong dateS) {
        if (expires == null) {
            return OptionalLong.empty();
        }
        OptionalLong atS = epochS(expires);
        if (atS.isEmpty()) {
            return OptionalLong.of(0); // "0" and the like: it has expired (RFC 9111, 5.3)
        }
        return dateS.isPresent() ? OptionalLong.of(atS.getAsLong() - dateS.getAsLong()) : OptionalLong.empty();
    }

    private static OptionalLong retryAfterS(@Nullable String retryAfter, OptionalLong dateS) {
        if (retryAfter != null && SECONDS.matcher(retryAfter.strip()).matches()) {
            return OptionalLong.of(Long.parseLong(retryAfter.strip()));
        }
        OptionalLong atS = epochS(retryAfter);
        return atS.isPresent() && dateS.isPresent()
                ? OptionalLong.of(atS.getAsLong() - dateS.getAsLong())
                : OptionalLong.empty();
    }

    private static OptionalLong epochS(@Nullable String value) {
        if (value == null) {
            return OptionalLong.empty();
        }
        try {
            Instant at = DateTimeFormatter.RFC_1123_DATE_TIME.parse(value.strip(), Instant::from);
            return OptionalLong.of(at.getEpochSecond());
        } catch (DateTimeException e) {
            return OptionalLong.empty();
        }
    }
}
