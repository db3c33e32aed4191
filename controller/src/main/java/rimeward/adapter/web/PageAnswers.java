package rimeward.adapter.web;

import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.LongSupplier;
import rimeward.page.NowJson;
import rimeward.page.Sight;
import rimeward.page.Tonight;
import rimeward.page.TunnelJson;
import rimeward.port.Past;

/** Who asks for what. For the answering thread. */
final class PageAnswers implements WebServer.Answers {
    private static final int LEAST_PACKED_BYTES = 1024;

    private final Doorman doorman;
    private final Newest newest;
    private final OrderDoor orders;
    private final History history;
    private final LongSupplier nanoTime;
    private final StaticFiles files = new StaticFiles();
    private final Map<String, Function<Sight, String>> shown;

    PageAnswers(Doorman doorman, Newest newest, OrderDoor orders, History history, LongSupplier nanoTime) {
        this.doorman = doorman;
        this.newest = newest;
        this.orders = orders;
        this.history = history;
        this.nanoTime = nanoTime;
        shown = Map.of("/api/now", NowJson::of, "/api/tonight", Tonight::json, "/api/tunnel", TunnelJson::of);
    }

    @Override
    public Response to(Request request) {
        Optional<Response> refusal = doorman.refuses(request);
        return refusal.orElseGet(
                () -> packed(request, request.path().equals("/api/ask") ? asked(request) : read(request)));
    }

    private Response asked(Request request) {
        if (!request.method().equals("POST")) {
            return Response.refusal(405, "Orders are given by POST.").with("Allow", "POST");
        }
        return doorman.refusesOrder(request, nanoTime.getAsLong() / 1_000_000)
                .orElseGet(() -> orders.take(request.body()));
    }

    private Response read(Request request) {
        if (!request.method().equals("GET") && !request.isHead()) {
            return Response.refusal(405, "This can be read, and no more.").with("Allow", "GET, HEAD");
        }
        history.rememberAlerts(newest.alerts());
        if (request.path().equals("/api/live")) {
            return Response.events();
        }
        try {
            return files.answer(request)
                    .or(() -> now(request.path()))
                    .or(() -> history.answer(request, newest.sight()))
                    .orElseGet(() -> Response.refusal(404, "There is no such page."));
        } catch (Past.Unreadable e) {
            return Response.refusal(503, e.getMessage() + "").with("Retry-After", "10");
        }
    }

    private Optional<Response> now(String path) {
        Function<Sight, String> asked = shown.get(path);
        if (asked == null) {
            return Optional.empty();
        }
        return Optional.of(newest.sight()
                .map(sight -> Response.json(200, asked.apply(sight)))
                .orElseGet(() -> Response.refusal(503, "The service has decided nothing yet. Try again in a moment.")
                        .with("Retry-After", "2")));
    }

    private static Response packed(Request request, Response response) {
        boolean packs = request.takesGzip()
                && response.body().remaining() >= LEAST_PACKED_BYTES
                && !response.headers().containsKey("Content-Encoding")
                && !response.headers().containsKey("ETag");
        return packs
                ? response.with(StaticFiles.packed(response.body()))
                        .with("Content-Encoding", "gzip")
                        .with("Vary", "Accept-Encoding")
                : response;
    }
}
