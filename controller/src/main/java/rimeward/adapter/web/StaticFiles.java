package rimeward.adapter.web;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import java.util.zip.GZIPOutputStream;

/**
 * What the page is made of, out of the jar. A name is looked up as it stands, and none with a folder, a dot in front or an escape in it is
 * one, so nothing else can be reached. From any thread.
 */
final class StaticFiles {
    private static final Pattern NAME = Pattern.compile("[a-zA-Z][a-zA-Z0-9-]{0,60}\\.([a-z0-9]{2,11})");

    private static final Map<String, String> TYPES = Map.of(
            "html", "text/html; charset=utf-8",
            "css", "text/css; charset=utf-8",
            "js", "text/javascript; charset=utf-8",
            "svg", "image/svg+xml",
            "png", "image/png",
            "ico", "image/x-icon",
            "webmanifest", "application/manifest+json");

    /** Names of their own for the charting library's files, see the module's pom. */
    private static final Map<String, String> CHART =
            Map.of("chart.js", "uPlot.iife.min.js", "chart.css", "uPlot.min.css");

    private record StaticFile(String type, ByteBuffer plain, ByteBuffer packed, String tag) {}

    private final Map<String, StaticFile> known = new ConcurrentHashMap<>();

    /** The answer; empty where there is no such file. */
    Optional<Response> answer(Request request) {
        String name = request.path().equals("/") ? "index.html" : request.path().substring(1);
        var parts = NAME.matcher(name);
        String type = parts.matches() ? TYPES.getOrDefault(parts.group(1), "") : "";
        if (type.isEmpty()) {
            return Optional.empty();
        }
        StaticFile file = known.get(name);
        if (file == null) {
            Optional<StaticFile> read = read(CHART.getOrDefault(name, name), type);
            if (read.isEmpty()) {
                return Optional.empty(); // not remembered: strangers could name any number of them
            }
            file = read.get();
            known.put(name, file);
        }
        return Optional.of(answer(request, file));
    }

    private static Response answer(Request request, StaticFile file) {
        boolean packs =
                request.takesGzip() && file.packed().remaining() < file.plain().remaining();
        String tag = '"' + file.tag() + (packs ? "-gz" : "") + '"';
        String held = request.header("if-none-match").orElse("");
        if (held.equals("*") || held.contains(tag)) {
            return Response.notModified(tag);
        }
        Response response = Response.of(200, file.type(), packs ? file.packed() : file.plain())
                .with("ETag", tag)
                .with("Cache-Control", "no-cache")
                .with("Vary", "Accept-Encoding");
        return packs ? response.with("Content-Encoding", "gzip") : response;
    }

    private static Optional<StaticFile> read(String name, String type) {
        try (InputStream in = StaticFiles.class.getResourceAsStream("page/" + name)) {
            if (in == null) {
                return Optional.empty();
            }
            ByteBuffer plain = ByteBuffer.wrap(in.readAllBytes());
            return Optional.of(new StaticFile(type, plain, packed(plain), tag(plain.array())));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String tag(byte[] plain) {
        try {
            byte[] sum = MessageDigest.getInstance("SHA-256").digest(plain);
            return HexFormat.of().formatHex(sum, 0, 8);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e); // every JDK has it
        }
    }

    /** As gzip (RFC 1952). */
    static ByteBuffer packed(ByteBuffer plain) {
        byte[] bytes = new byte[plain.remaining()];
        plain.duplicate().get(bytes);
        ByteArrayOutputStream out = new ByteArrayOutputStream(bytes.length / 2 + 64);
        try (GZIPOutputStream packing = new GZIPOutputStream(out)) {
            packing.write(bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return ByteBuffer.wrap(out.toByteArray());
    }
}
