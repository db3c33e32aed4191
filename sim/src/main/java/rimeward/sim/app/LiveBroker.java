package rimeward.sim.app;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import rimeward.site.Messaging;
import rimeward.site.Site;

/** Which broker {@code live} speaks to: the one it was told, the one in the scenario's settings, or a private one. */
final class LiveBroker implements AutoCloseable {
    private static final Pattern PLACE = Pattern.compile("(\\[[0-9a-fA-F:]+]|[^:]+)(?::(\\d{1,5}))?");
    private static final int PORT = 1883;

    private final Messaging messaging;
    private final Optional<PrivateBroker> own;

    private LiveBroker(Messaging messaging, Optional<PrivateBroker> own) {
        this.messaging = messaging;
        this.own = own;
    }

    /**
     * Finds or starts it.
     *
     * @param told {@code host}, {@code host:port} or {@code none}; null where nobody said
     * @throws IllegalArgumentException if that is no place
     */
    static LiveBroker of(Site site, @Nullable String told, Path folder, Consumer<String> lines) throws IOException {
        if ("none".equals(told)) {
            return new LiveBroker(new Messaging.None(), Optional.empty());
        }
        if (told != null) {
            return new LiveBroker(shown(site, at(told), lines), Optional.empty());
        }
        if (site.messaging() instanceof Messaging.Mqtt mqtt) {
            return new LiveBroker(shown(site, mqtt, lines), Optional.empty());
        }
        Optional<PrivateBroker> own = PrivateBroker.start(folder);
        if (own.isEmpty()) {
            lines.accept("No broker of messages here; to see them, too: apt-get install mosquitto mosquitto-clients");
            return new LiveBroker(new Messaging.None(), own);
        }
        return new LiveBroker(shown(site, own.get().messaging(), lines), own);
    }

    private static Messaging.Mqtt at(String told) {
        Matcher place = PLACE.matcher(told);
        if (!place.matches()) {
            throw new IllegalArgumentException("write HOST or HOST:PORT");
        }
        String host = place.group(1).replaceAll("[\\[\\]]", "");
        int port = place.group(2) == null ? PORT : Integer.parseInt(place.group(2));
        return new Messaging.Mqtt(
                host, port, new Messaging.Security.Plain(true), new Messaging.Login.None(), "homie", List.of(), false);
    }

    private static Messaging.Mqtt shown(Site site, Messaging.Mqtt mqtt, Consumer<String> lines) {
        lines.accept("Its messages: mosquitto_sub -h " + mqtt.host() + " -p " + mqtt.port() + " -v -t '" + mqtt.domain()
                + "/5/" + site.id() + "/#'");
        return mqtt;
    }

    Messaging messaging() {
        return messaging;
    }

    @Override
    public void close() {
        own.ifPresent(PrivateBroker::close);
    }
}
