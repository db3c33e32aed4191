package rimeward.browser;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.zip.GZIPOutputStream;

/**
 * A stand-in for the service: the real page's files with the headers that are agreed on, and hand-made answers. For looking at states that a
 * simulated night seldom shows.
 */
final class StandIn implements AutoCloseable {
    static final String TOKEN = "a-token-of-thirty-two-letters-00";
    private static final String CSP =
            "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; connect-src 'self';"
                    + " base-uri 'none'; form-action 'none'; frame-ancestors 'none'";
    private static final String CHARTS = "/META-INF/resources/webjars/uplot/1.6.30/dist/";
    private static final Map<String, String> CHART_FILES =
            Map.of("/chart.js", CHARTS + "uPlot.iife.min.js", "/chart.css", CHARTS + "uPlot.min.css");
    private static final String JSON = "application/json";
    private static final Map<String, String> TYPES =
            Map.of("html", "text/html", "css", "text/css", "js", "text/javascript", "json", JSON);

    private final Runnable leaving;
    private final HttpServer server;
    private final ExecutorService threads = Executors.newCachedThreadPool();
    private final Map<String, String> answers = new ConcurrentHashMap<>();
    private final List<OutputStream> ears = new CopyOnWriteArrayList<>();
    private final List<String> asked = new CopyOnWriteArrayList<>();
    private final List<String> sizes = new CopyOnWriteArrayList<>();

    /** Begins with the case's own {@code now}, and what all cases share; before it ends, whoever looks on leaves. */
    StandIn(int port, String story, Runnable leaving) throws IOException {
        this.leaving = leaving;
        server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), port), 0);
        server.setExecutor(threads);
        server.createContext("/", this::file);
        server.createContext("/api/", this::api);
        server.createContext("/api/live", this::live);
        server.createContext("/api/ask", this::ask);
        answers.putAll(Story.of(story));
        server.start();
    }

    /** Shows a case in the foreground: {@code StandIn PORT CASE}. */
    public static void main(String[] args) throws IOException {
        new StandIn(Integer.parseInt(args[0]), args[1], () -> {});
    }

    String address() {
        return "http://127.0.0.1:" + server.getAddress().getPort();
    }

    List<String> asked() {
        return asked;
    }

    /** What the heat-loss sheet was asked with. */
    List<String> sizes() {
        return sizes;
    }

    /** From now on this is so; whoever listens is told. */
    void say(String now) {
        answers.put("/api/now", now);
        ears.forEach(ear -> tell(ear, now));
    }

    String says(String path) {
        return answers.getOrDefault(path, "");
    }

    private void file(HttpExchange exchange) throws IOException {
        String path = exchange.getRequestURI().getPath();
        String name = path.equals("/") ? "/index.html" : path;
        String resource = CHART_FILES.getOrDefault(name, "/rimeward/adapter/web/page" + name);
        try (InputStream in = StandIn.class.getResourceAsStream(resource)) {
            if (in == null || name.contains("..")) {
                send(exchange, 404, "text/plain", "no such page".getBytes(UTF_8));
            } else {
                send(
                        exchange,
                        200,
                        TYPES.getOrDefault(name.substring(name.lastIndexOf('.') + 1), "text/plain"),
                        in.readAllBytes());
            }
        }
    }

    private void api(HttpExchange exchange) throws IOException {
        String path = exchange.getRequestURI().getPath();
        if (path.equals("/api/size")) {
            sizes.add(exchange.getRequestURI().getRawQuery());
        }
        String answer = path.startsWith("/api/night/") && answers.containsKey("/api/night")
                ? nightOf(LocalDate.parse(path.substring("/api/night/".length())))
                : answers.get(path);
        if (answer == null) {
            send(exchange, 404, JSON, "{\"error\":\"There is no such thing here.\"}".getBytes(UTF_8));
        } else {
            send(exchange, 200, JSON, answer.getBytes(UTF_8));
        }
    }

    private String nightOf(LocalDate night) {
        return answers.getOrDefault("/api/night", "").replace("\"NIGHT\"", Invented.night(night, 3));
    }

    private void live(HttpExchange exchange) throws IOException {
        head(exchange, "text/event-stream");
        exchange.sendResponseHeaders(200, 0);
        ears.add(exchange.getResponseBody());
        tell(exchange.getResponseBody(), says("/api/now"));
    }

    private void tell(OutputStream ear, String now) {
        try {
            ear.write(("event: now\ndata: " + now + "\n\n").getBytes(UTF_8));
            ear.flush();
        } catch (IOException gone) {
            ears.remove(ear);
        }
    }

    private void ask(HttpExchange exchange) throws IOException {
        String order = new String(exchange.getRequestBody().readAllBytes(), UTF_8);
        if (!("Bearer " + TOKEN).equals(exchange.getRequestHeaders().getFirst("Authorization"))) {
            send(exchange, 401, JSON, "{\"error\":\"This is not the token.\"}".getBytes(UTF_8));
        } else {
            asked.add(order);
            send(exchange, 202, JSON, "{\"asked\":true}".getBytes(UTF_8));
        }
    }

    private static void send(HttpExchange exchange, int status, String type, byte[] body) throws IOException {
        head(exchange, type);
        exchange.getResponseHeaders().set("Content-Encoding", "gzip");
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (GZIPOutputStream zip = new GZIPOutputStream(packed)) {
            zip.write(body);
        }
        exchange.sendResponseHeaders(status, packed.size());
        try (OutputStream out = exchange.getResponseBody()) {
            packed.writeTo(out);
        }
    }

    private static void head(HttpExchange exchange, String type) {
        exchange.getResponseHeaders().set("Content-Type", type + "; charset=utf-8");
        exchange.getResponseHeaders().set("Content-Security-Policy", CSP);
        exchange.getResponseHeaders().set("X-Content-Type-Options", "nosniff");
        exchange.getResponseHeaders().set("Cache-Control", "no-cache");
    }

    @Override
    public void close() {
        leaving.run();
        server.stop(0);
        threads.shutdownNow();
    }
}
