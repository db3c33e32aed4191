package rimeward.adapter.forecast;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.ConnectException;
import java.net.HttpURLConnection;
import java.net.SocketTimeoutException;
import java.net.URI;
import java.net.UnknownHostException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.zip.GZIPInputStream;
import rimeward.json.Excerpt;
import rimeward.site.Forecasting.FromService;

/**
 * Asks over HTTP, as {@link HttpURLConnection} does: {@code java.net.http} keeps threads and 6 MiB more (37 MiB resident after the first reply
 * over TLS instead of 31, 30 instead of 6 without; JDK 17, the service's own options, x86-64). Every wait has a limit; a watchdog
 * cuts an answer that drips.
 */
final class HttpWire implements Wire {
    static {
        // Else the JDK, whatever we say in the question, keeps a line that was cut to read the rest on a thread of its
        // own, and
        // closing waits for that: for ever where a server drips. Nothing else in this program uses such lines.
        System.setProperty("http.keepAlive", "false");
    }

    /** How long we wait: for a line, for the next piece of an answer, and for an answer in all; ms. */
    record Limits(int connectMs, int readMs, int wholeMs) {
        /** A slow line in the country takes a second or two. Own choice. */
        static final Limits USUAL = new Limits(10_000, 10_000, 30_000);
    }

    private static final int MOST_HOPS = 3;
    private static final int OK = 200;
    private static final int DEPRECATED = 203;

    private final URI question;
    private final String userAgent;
    private final Limits limits;
    private final ScheduledThreadPoolExecutor watchdog;

    HttpWire(URI question, String userAgent, Limits limits) {
        this.question = question;
        this.userAgent = userAgent;
        this.limits = limits;
        watchdog = new ScheduledThreadPoolExecutor(1, run -> {
            Thread made = new Thread(run, "forecast watchdog");
            made.setDaemon(true);
            return made;
        });
        watchdog.setRemoveOnCancelPolicy(true);
    }

    /** What the service is asked: the place to two decimals, the altitude to ten metres, no more. */
    static URI question(FromService service, double altitudeM) {
        return URI.create(service.url()
                + String.format(
                        Locale.ROOT,
                        "?lat=%.2f&lon=%.2f&altitude=%d",
                        service.coarseLatitudeDeg(),
                        service.coarseLongitudeDeg(),
                        StrictMath.round(altitudeM / 10) * 10));
    }

    @Override
    public Reply ask(Optional<String> lastModified) throws NoReply {
        URI at = question;
        for (int hops = 0; hops <= MOST_HOPS; hops++) {
            HttpURLConnection line = open(at, lastModified);
            Cut cut = new Cut(line);
            // again and again: a first cut may come before there is anything to cut
            var due = watchdog.scheduleWithFixedDelay(cut, limits.wholeMs(), limits.wholeMs(), TimeUnit.MILLISECONDS);
            try {
                int status = line.getResponseCode();
                if (status < 100) {
                    throw new NoReply("It does not speak HTTP.");
                }
                String location = line.getHeaderField("Location");
                if (!isRedirect(status) || location == null) {
                    return reply(line, status, cut);
                }
                at = next(at, location);
            } catch (IOException | IllegalArgumentException e) {
                throw new NoReply(cut.done ? tooLong() : inWords(e));
            } finally {
                due.cancel(false);
                line.disconnect();
            }
        }
        throw new NoReply("It sends us on from one address to the next, more than " + MOST_HOPS + " times.");
    }

    private HttpURLConnection open(URI at, Optional<String> lastModified) throws NoReply {
        try {
            HttpURLConnection line = (HttpURLConnection) at.toURL().openConnection();
            line.setConnectTimeout(limits.connectMs());
            line.setReadTimeout(limits.readMs());
            line.setInstanceFollowRedirects(false); // only to where it is as safe, see next()
            line.setRequestProperty("User-Agent", userAgent);
            line.setRequestProperty("Accept", "application/json");
            line.setRequestProperty("Accept-Encoding", "gzip");
            line.setRequestProperty("Connection", "close"); // the next question comes in half an hour
            lastModified.ifPresent(said -> line.setRequestProperty("If-Modified-Since", said));
            return line;
        } catch (IOException | IllegalArgumentException e) {
            throw new NoReply(inWords(e));
        }
    }

    private static boolean isRedirect(int status) {
        return switch (status) {
            case 301, 302, 303, 307, 308 -> true;
            default -> false;
        };
    }

    private static URI next(URI from, String location) throws NoReply {
        URI to = from.resolve(location); // IllegalArgumentException where it is none
        String plain = to.toString().split("[?#]", 2)[0];
        if (!FromService.isSafe(plain)) {
            throw new NoReply(
                    "It sends us on to " + Excerpt.of(plain) + ", which is not encrypted. Look at url in [forecast].");
        }
        return to;
    }

    private Reply reply(HttpURLConnection line, int status, Cut cut) throws IOException, NoReply {
        String body = status == OK || status == DEPRECATED ? body(line, cut) : "";
        return HttpDates.reply(status, body, line::getHeaderField);
    }

    private String body(HttpURLConnection line, Cut cut) throws IOException, NoReply {
        if (line.getContentLengthLong() > Plausible.MOST_BYTES) {
            throw tooMuch();
        }
        boolean packed = "gzip".equalsIgnoreCase(line.getContentEncoding());
        try (InputStream plain = line.getInputStream();
                InputStream in = packed ? new GZIPInputStream(plain) : plain) {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            byte[] piece = new byte[8192];
            for (int n = in.read(piece); n >= 0; n = in.read(piece)) {
                out.write(piece, 0, n);
                if (cut.done) {
                    throw new NoReply(tooLong());
                }
                if (out.size() > Plausible.MOST_BYTES) { // also of what was packed small
                    throw tooMuch();
                }
            }
            return out.toString(StandardCharsets.UTF_8);
        }
    }

    private static NoReply tooMuch() {
        return new NoReply("It answers with more than " + Plausible.MOST_BYTES + " bytes, which no forecast has.");
    }

    private String tooLong() {
        return "It did not finish its answer within " + limits.wholeMs() / 1000 + " s.";
    }

    private String inWords(Exception e) {
        if (e instanceof UnknownHostException) {
            return "Its name cannot be looked up. Is the network there?";
        }
        if (e instanceof SocketTimeoutException) {
            return "It does not answer: nothing came for " + limits.readMs() / 1000 + " s.";
        }
        if (e instanceof ConnectException) {
            return "It cannot be reached (" + said(e) + "). Is the network there?";
        }
        return "The line to it failed (" + said(e) + ").";
    }

    private static String said(Exception e) {
        return e.getClass().getSimpleName() + ": " + Excerpt.of(String.valueOf(e.getMessage()));
    }

    /** Never throws: a watchdog that did would not bark again. */
    private static final class Cut implements Runnable {
        private final HttpURLConnection line;
        private volatile boolean done;

        Cut(HttpURLConnection line) {
            this.line = line;
        }

        @Override
        public void run() {
            done = true;
            line.disconnect();
        }
    }

    @Override
    public void close() {
        watchdog.shutdownNow();
    }
}
