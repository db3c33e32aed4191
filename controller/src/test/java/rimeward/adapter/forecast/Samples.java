package rimeward.adapter.forecast;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.Objects;

/** Forecasts in the shapes in which they come; all values are invented. */
final class Samples {
    /** When the replies were issued. */
    static final long ISSUED_S = Instant.parse("2026-01-10T14:21:07Z").getEpochSecond();

    /** Their last point. */
    static final long LAST_S = Instant.parse("2026-01-11T12:00:00Z").getEpochSecond();

    private Samples() {}

    static byte[] bytes(String name) {
        try (InputStream in = Samples.class.getResourceAsStream("/rimeward/forecast/" + name)) {
            return Objects.requireNonNull(in, name).readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static String text(String name) {
        return new String(bytes(name), UTF_8);
    }

    /** The short reply, all of whose times are later by this. */
    static String compactLaterByDays(int days) {
        return text("compact.json")
                .replace("2026-01-11T", "2026-01-" + (11 + days) + "T")
                .replace("2026-01-10T", "2026-01-" + (10 + days) + "T");
    }
}
