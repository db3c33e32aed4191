package rimeward.adapter.web;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads requests of HTTP/1.1 and 1.0 (RFC 9112), the strict way: whatever two readers could understand differently is refused. No body but
 * one of a stated length is taken.
 */
final class RequestText {
    private static final int MOST_HEADERS = 64;
    private static final int MOST_TARGET = 512;
    private static final Pattern LINE = Pattern.compile("([A-Z]{1,16}) (/[!-~]*) HTTP/1\\.([01])");
    private static final Pattern OTHER_VERSION = Pattern.compile("[A-Z]{1,16} [!-~]+ HTTP/\\d\\.\\d");
    private static final Pattern LENGTH = Pattern.compile("\\d{1,9}");

    /** Of these two would contradict each other. */
    private static final Set<String> ONCE =
            Set.of("host", "content-length", "content-type", "authorization", "origin", "transfer-encoding");

    private final WebLimits limits;

    RequestText(WebLimits limits) {
        this.limits = limits;
    }

    /** @param length how many of the bytes have come */
    Parsed read(byte[] bytes, int length) {
        int end = end(bytes, length);
        if (end < 0) {
            return length >= limits.headBytes() ? tooLong(bytes, length) : soFar(bytes, length);
        }
        if (end > limits.headBytes()) {
            return tooLong(bytes, end);
        }
        String head = new String(bytes, 0, end, ISO_8859_1);
        return head(head, bytes, end + 4, length);
    }

    /** A first line that can no longer become one is not waited for. */
    private static Parsed soFar(byte[] bytes, int length) {
        for (int i = 0; i < Math.min(length, 16); i++) {
            if (bytes[i] == ' ') {
                return Parsed.MORE;
            }
            if (bytes[i] < 'A' || bytes[i] > 'Z') {
                return new Parsed.Bad(400, "This is no request of HTTP.");
            }
        }
        return length > 16 ? new Parsed.Bad(400, "This is no request of HTTP.") : Parsed.MORE;
    }

    private static int end(byte[] bytes, int length) {
        for (int i = 3; i < length; i++) {
            if (bytes[i] == '\n' && bytes[i - 1] == '\r' && bytes[i - 2] == '\n' && bytes[i - 3] == '\r') {
                return i - 3;
            }
        }
        return -1;
    }

    private static Parsed tooLong(byte[] bytes, int length) {
        for (int i = 0; i < length; i++) {
            if (bytes[i] == '\n') {
                return new Parsed.Bad(431, "The headers are too long.");
            }
        }
        return new Parsed.Bad(414, "The address is too long.");
    }

    private Parsed head(String head, byte[] bytes, int bodyAt, int length) {
        String[] lines = head.split("\r\n", -1);
        Matcher line = LINE.matcher(lines[0]);
        if (!line.matches()) {
            return OTHER_VERSION.matcher(lines[0]).matches() && !lines[0].contains("HTTP/1.")
                    ? new Parsed.Bad(505, "Only HTTP/1.1 is spoken here.")
                    : new Parsed.Bad(400, "This is no request of HTTP.");
        }
        if (line.group(2).length() > MOST_TARGET) {
            return new Parsed.Bad(414, "The address is too long.");
        }
        if (lines.length - 1 > MOST_HEADERS) {
            return new Parsed.Bad(431, "There are too many headers.");
        }
        Map<String, String> headers = new LinkedHashMap<>();
        for (int i = 1; i < lines.length; i++) {
            if (!add(headers, lines[i])) {
                return new Parsed.Bad(400, "A header cannot be understood.");
            }
        }
        boolean newer = line.group(3).equals("1");
        if (newer && !headers.containsKey("host")) {
            return new Parsed.Bad(400, "No host is named.");
        }
        return body(line.group(1), line.group(2), headers, newer, bytes, bodyAt, length);
    }

    /** By hand and not by a pattern, which a line of blanks could keep busy for seconds. */
    private static boolean add(Map<String, String> headers, String line) {
        int colon = line.indexOf(':');
        if (colon <= 0 || !line.substring(0, colon).chars().allMatch(RequestText::isInName)) {
            return false;
        }
        String value = line.substring(colon + 1).strip();
        if (!value.chars().allMatch(c -> c == '\t' || (c >= ' ' && c != 127))) {
            return false;
        }
        String name = line.substring(0, colon).toLowerCase(Locale.ROOT);
        String before = headers.putIfAbsent(name, value);
        if (before != null) {
            headers.put(name, before + ", " + value);
        }
        return before == null || !ONCE.contains(name);
    }

    /** A token of RFC 9110, section 5.6.2. */
    private static boolean isInName(int c) {
        return (c >= '0' && c <= '9')
                || (c >= 'A' && c <= 'Z')
                || (c >= 'a' && c <= 'z')
                || "!#$%&'*+-.^_`|~".indexOf(c) >= 0;
    }

    private Parsed body(
            String method,
            String target,
            Map<String, String> headers,
            boolean newer,
            byte[] bytes,
            int bodyAt,
            int length) {
        if (headers.containsKey("transfer-encoding")) {
            return new Parsed.Bad(501, "A body must state its length.");
        }
        if (headers.containsKey("expect")) {
            return new Parsed.Bad(417, "Nothing is promised beforehand.");
        }
        String stated = headers.getOrDefault("content-length", "0");
        if (!LENGTH.matcher(stated).matches()) {
            return new Parsed.Bad(400, "The body's length is no number.");
        }
        int bodyLength = Integer.parseInt(stated);
        if (bodyLength > limits.bodyBytes()) {
            return new Parsed.Bad(413, "The body is too long.");
        }
        if (length < bodyAt + bodyLength) {
            return Parsed.MORE;
        }
        String body = new String(bytes, bodyAt, bodyLength, UTF_8);
        String connection = headers.getOrDefault("connection", "").toLowerCase(Locale.ROOT);
        boolean keeps = newer && !connection.contains("close");
        int askedAt = target.indexOf('?');
        String path = askedAt < 0 ? target : target.substring(0, askedAt);
        String question = askedAt < 0 ? "" : target.substring(askedAt + 1);
        return new Parsed.Whole(method, path, question, headers, body, keeps, bodyAt + bodyLength);
    }
}
