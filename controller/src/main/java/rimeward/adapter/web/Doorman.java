package rimeward.adapter.web;

import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import rimeward.site.Messaging;
import rimeward.site.Page;

/**
 * Who may ask. A name that is not ours is refused, so that no other site's name can be turned upon this machine (DNS rebinding); what changes
 * anything needs the token, and must not come from another site's page. Wrong tokens are let through ever more slowly. For one thread.
 */
final class Doorman {
    private static final Pattern HOST =
            Pattern.compile("([a-z0-9](?:[a-z0-9.-]{0,251}[a-z0-9])?\\.?|\\[[0-9a-f:.]{2,45}])(?::\\d{1,5})?");
    private static final int TRIES = 8; // wrong tokens from one address at once; own choice, as the next two
    private static final long ONE_MORE_MS = 10_000;
    private static final int ADDRESSES = 256;

    private static final int ORDERS = 16; // of anybody who has the token
    private static final long ORDER_MS = 2_000;

    private final Set<String> names = new TreeSet<>();
    private final @Nullable Token token;
    private final Allowance orders = new Allowance(ORDERS, ORDER_MS);
    private final Map<String, Allowance> tries = new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Allowance> eldest) {
            return size() > ADDRESSES;
        }
    };

    /** @param token null where there is none: then nothing can be asked for */
    Doorman(Page.Served page, @Nullable Token token) {
        this.token = token;
        page.hosts().forEach(name -> names.add(name.toLowerCase(Locale.ROOT)));
        if (Messaging.isLoopback(page.listen())) {
            names.add("localhost");
        }
    }

    /** Why this request is not answered; empty where it is. */
    Optional<Response> refuses(Request request) {
        String host = request.header("host").orElse("");
        Matcher parts = HOST.matcher(host.toLowerCase(Locale.ROOT));
        if (!parts.matches()) {
            return Optional.of(Response.refusal(400, "The host that is asked for is no name."));
        }
        String name = inFull(parts.group(1));
        if (!names.contains(name) && !name.equals(request.here())) {
            return Optional.of(Response.refusal(
                    421,
                    "The page does not answer to that name. Add it to hosts of [page] in the settings if it should."));
        }
        return Optional.empty();
    }

    /** An IPv6 address has many spellings; nothing is looked up. */
    private static String inFull(String name) {
        if (!name.startsWith("[")) {
            return name.endsWith(".") ? name.substring(0, name.length() - 1) : name;
        }
        try {
            return Connection.shown(InetAddress.getByName(name));
        } catch (UnknownHostException e) {
            return "";
        }
    }

    /** The same for a request that asks for something to be done. */
    Optional<Response> refusesOrder(Request request, long nowMs) {
        String origin = request.header("origin").orElse("");
        String host = request.header("host").orElse("");
        if (!origin.isEmpty() && !origin.equals("http://" + host) && !origin.equals("https://" + host)) {
            return Optional.of(Response.refusal(403, "Another site's page asks for this."));
        }
        String site = request.header("sec-fetch-site").orElse("same-origin");
        if (!site.equals("same-origin") && !site.equals("none")) {
            return Optional.of(Response.refusal(403, "Another site's page asks for this."));
        }
        String type = request.header("content-type").orElse("").toLowerCase(Locale.ROOT);
        if (!type.equals("application/json") && !type.replace(" ", "").equals("application/json;charset=utf-8")) {
            return Optional.of(Response.refusal(415, "Orders are taken as application/json only."));
        }
        return refusesToken(request, nowMs);
    }

    private Optional<Response> refusesToken(Request request, long nowMs) {
        if (token == null) {
            return Optional.of(Response.refusal(
                    401, "Nothing may be asked for from the page: the service has no token. Its log says why."));
        }
        Allowance left = tries.computeIfAbsent(request.from(), from -> new Allowance(TRIES, ONE_MORE_MS));
        if (left.isSpent(nowMs)) {
            return Optional.of(Response.refusal(429, "Too many wrong tokens. Wait a little.")
                    .with("Retry-After", "10"));
        }
        if (!token.isNamedIn(request.header("authorization").orElse(""))) {
            left.take(nowMs);
            return Optional.of(Response.refusal(401, "Orders need the token of the service's file.")
                    .with("WWW-Authenticate", "Bearer"));
        }
        if (orders.isSpent(nowMs)) {
            return Optional.of(Response.refusal(429, "Too much is asked for at once. Wait a little.")
                    .with("Retry-After", "2"));
        }
        orders.take(nowMs);
        return Optional.empty();
    }
}
