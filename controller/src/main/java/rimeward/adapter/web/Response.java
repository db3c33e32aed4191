package rimeward.adapter.web;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;

import java.nio.ByteBuffer;
import java.util.LinkedHashMap;
import java.util.Map;
import rimeward.json.JsonText;

/**
 * An answer.
 *
 * @param body as it goes out; nobody moves its position
 * @param live whether it never ends, and events follow
 */
record Response(int status, Map<String, String> headers, ByteBuffer body, boolean live) {
    static final String JSON = "application/json; charset=utf-8";

    /** Scripts, styles and data come from here and nowhere else, and nobody may frame the page (CSP level 3, W3C). */
    static final String POLICY = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:;"
            + " connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

    private static final ByteBuffer NOTHING = ByteBuffer.allocate(0);

    static Response of(int status, String type, ByteBuffer body) {
        return new Response(status, Map.of("Content-Type", type), body, false);
    }

    static Response json(int status, String text) {
        return of(status, JSON, ByteBuffer.wrap(text.getBytes(UTF_8))).with("Cache-Control", "no-store");
    }

    /** A refusal, in a sentence. */
    static Response refusal(int status, String why) {
        return json(status, JsonText.of(Map.of("error", why)));
    }

    static Response notModified(String tag) {
        return new Response(304, Map.of("ETag", tag, "Cache-Control", "no-cache"), NOTHING, false);
    }

    /** Events until somebody leaves. */
    static Response events() {
        return new Response(
                200,
                Map.of("Content-Type", "text/event-stream; charset=utf-8", "Cache-Control", "no-store"),
                NOTHING,
                true);
    }

    Response with(String name, String value) {
        Map<String, String> more = new LinkedHashMap<>(headers);
        more.put(name, value);
        return new Response(status, more, body, live);
    }

    /** With another body, which the headers describe. */
    Response with(ByteBuffer other) {
        return new Response(status, headers, other, live);
    }

    /** What goes out before the body. */
    ByteBuffer head(boolean keeps) {
        StringBuilder head = new StringBuilder("HTTP/1.1 " + status + " " + reason(status) + "\r\n");
        Map<String, String> all = new LinkedHashMap<>(headers);
        all.putIfAbsent("Content-Security-Policy", POLICY);
        all.put("X-Content-Type-Options", "nosniff");
        all.put("Referrer-Policy", "no-referrer");
        all.put("Cross-Origin-Opener-Policy", "same-origin");
        all.put("Cross-Origin-Resource-Policy", "same-origin");
        if (!live && status != 304) {
            all.put("Content-Length", Integer.toString(body.remaining()));
        }
        all.put("Connection", keeps && !live ? "keep-alive" : "close");
        all.forEach(
                (name, value) -> head.append(name).append(": ").append(value).append("\r\n"));
        return ByteBuffer.wrap(head.append("\r\n").toString().getBytes(ISO_8859_1));
    }

    private static String reason(int status) {
        return switch (status) {
            case 200 -> "OK";
            case 202 -> "Accepted";
            case 304 -> "Not Modified";
            case 401 -> "Unauthorized";
            case 403 -> "Forbidden";
            case 404 -> "Not Found";
            case 405 -> "Method Not Allowed";
            case 408 -> "Request Timeout";
            case 413 -> "Content Too Large";
            case 414 -> "URI Too Long";
            case 415 -> "Unsupported Media Type";
            case 417 -> "Expectation Failed";
            case 421 -> "Misdirected Request";
            case 422 -> "Unprocessable Content";
            case 429 -> "Too Many Requests";
            case 431 -> "Request Header Fields Too Large";
            case 500 -> "Internal Server Error";
            case 501 -> "Not Implemented";
            case 503 -> "Service Unavailable";
            case 505 -> "HTTP Version Not Supported";
            default -> "Bad Request";
        };
    }
}
