package rimeward.adapter.web;

import java.util.Map;

/** What the bytes of a connection have come to so far. */
sealed interface Parsed {
    /** Not whole yet. */
    record More() implements Parsed {}

    /**
     * A whole one.
     *
     * @param question what stands after the path's question mark; empty without
     * @param length bytes of it; what follows belongs to the next
     */
    record Whole(
            String method,
            String path,
            String question,
            Map<String, String> headers,
            String body,
            boolean keeps,
            int length)
            implements Parsed {}

    /** None that is answered with more than a refusal. */
    record Bad(int status, String why) implements Parsed {}

    Parsed MORE = new More();
}
