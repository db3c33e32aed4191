package rimeward.adapter.forecast;

import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rimeward.json.Excerpt;
import rimeward.json.Json;
import rimeward.json.JsonReader;
import rimeward.json.NoJson;

/** Takes out of JSON what must be there, or says what is missing. */
final class Members {
    private static final int LONGEST_TIME = 40;

    private Members() {}

    static Json read(String text) throws Unreadable {
        try {
            return JsonReader.read(text);
        } catch (NoJson e) {
            throw new Unreadable(e.why());
        }
    }

    /** What stands under these names, one within the other. */
    static Json inner(Json json, String... path) throws Unreadable {
        Json at = json;
        for (String name : path) {
            Optional<Json> next = at.get(name);
            at = next.orElseThrow(() -> new Unreadable("it has no " + String.join(".", path)));
        }
        return at;
    }

    static List<Json> list(Json json, String... path) throws Unreadable {
        if (inner(json, path) instanceof Json.Elements elements) {
            return elements.each();
        }
        throw new Unreadable(String.join(".", path) + " is no list");
    }

    static double number(String where, Json json, String name) throws Unreadable {
        return find(where, json, name).orElseThrow(() -> new Unreadable(where + ": it has no " + name));
    }

    /** Empty where it is not said. */
    static OptionalDouble find(String where, Json json, String name) throws Unreadable {
        Optional<Json> found = json.get(name);
        if (found.isEmpty() || found.get().equals(new Json.Word("null"))) {
            return OptionalDouble.empty();
        }
        if (found.get() instanceof Json.Figure figure) {
            return OptionalDouble.of(figure.value());
        }
        throw new Unreadable(where + ": " + name + " is no number");
    }

    /** s since 1970 UTC. */
    static long time(String where, Json json, String name) throws Unreadable {
        if (inner(json, name) instanceof Json.Text text) {
            return time(where + ": " + name, text.text());
        }
        throw new Unreadable(where + ": " + name + " is no time");
    }

    /** s since 1970 UTC of a time by ISO 8601 that states its offset. */
    static long time(String what, String text) throws Unreadable {
        try {
            if (text.length() <= LONGEST_TIME) {
                return OffsetDateTime.parse(text).toEpochSecond();
            }
        } catch (DateTimeException e) {
            // said below
        }
        throw new Unreadable(what + " is " + Excerpt.of(text)
                + "; a time with its offset is needed, such as 2026-01-10T15:00Z or 2026-01-10T16:00+01:00");
    }
}
