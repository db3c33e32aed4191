package rimeward.adapter.web;

import java.util.Map;
import java.util.Optional;

/**
 * One whole request.
 *
 * @param path without the question after it
 * @param question that: empty without one
 * @param headers by lower-case name
 * @param here the address on our side, as a browser may write it: an IPv6 one in brackets
 * @param from the address on the other side
 * @param keeps whether the connection may be used again
 */
record Request(
        String method,
        String path,
        String question,
        Map<String, String> headers,
        String body,
        String here,
        String from,
        boolean keeps) {

    Optional<String> header(String name) {
        return Optional.ofNullable(headers.get(name));
    }

    boolean isHead() {
        return method.equals("HEAD");
    }

    /** Whether a compressed answer is welcome. A weight of 0, which nobody sends, is taken for a yes. */
    boolean takesGzip() {
        return headers.getOrDefault("accept-encoding", "").contains("gzip");
    }
}
