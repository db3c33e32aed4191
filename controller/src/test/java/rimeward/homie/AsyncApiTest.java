package rimeward.homie;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.yaml.snakeyaml.Yaml;
import rimeward.core.outlook.Outlook;
import rimeward.json.JsonText;
import rimeward.site.Site;

/** Holds {@code config/asyncapi.yaml} (AsyncAPI 3.0) to what the device says and takes, both ways. */
final class AsyncApiTest {
    private final Map<?, ?> root = document();
    private final List<Channel> channels = channels();

    /** One channel: a pattern of topics, what is done there, and the message's schema and examples. */
    private record Channel(String name, String topics, String action, Map<?, ?> message) {
        boolean has(String topic) {
            return topic.matches(topics);
        }
    }

    private static Map<?, ?> document() {
        try {
            return new Yaml().<Map<?, ?>>load(Files.readString(Path.of("..", "config", "asyncapi.yaml")));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static Map<?, ?> map(@Nullable Object value) {
        if (value instanceof Map<?, ?> map) {
            return map;
        }
        throw new AssertionError("no map: " + value);
    }

    private static Map<?, ?> in(Map<?, ?> from, String name) {
        return map(from.get(name));
    }

    private static String text(Map<?, ?> from, String name) {
        return String.valueOf(from.get(name));
    }

    private static List<?> examples(Map<?, ?> message) {
        return message.get("examples") instanceof List<?> list ? list : List.of();
    }

    /** What a {@code $ref} points to. */
    private Map<?, ?> follow(Map<?, ?> reference) {
        Map<?, ?> at = root;
        for (String step : text(reference, "$ref").substring(2).split("/", -1)) {
            at = in(at, step);
        }
        return at;
    }

    private List<Channel> channels() {
        Map<Object, String> actions = new LinkedHashMap<>();
        for (Object operation : in(root, "operations").values()) {
            Map<?, ?> channel = follow(in(map(operation), "channel"));
            assertThat(actions.put(channel, text(map(operation), "action"))).isNull();
        }
        List<Channel> all = new ArrayList<>();
        in(root, "channels").forEach((name, channel) -> {
            Map<?, ?> messages = in(map(channel), "messages");
            assertThat(messages).hasSize(1);
            String pattern = text(map(channel), "address").replace("$", "\\$").replaceAll("\\{\\w+}", "[a-z0-9-]+");
            in(map(channel), "parameters").values().forEach(each -> follow(map(each)));
            all.add(new Channel(
                    String.valueOf(name),
                    pattern,
                    String.valueOf(actions.get(channel)),
                    follow(map(messages.values().iterator().next()))));
        });
        return all;
    }

    private static Exchange evening(Site site, long seed) {
        Exchange exchange = new Exchange(site, Exchange.open("homie"));
        Random random = new Random(seed);
        exchange.connect();
        for (int i = 0; i < 40; i++) {
            exchange.outlook = i < 20 ? Outlook.NONE : new Outlook.Night(1, -7.25, 1.5, 30_000 - 5.0 * i);
            exchange.tick(OddSites.frame(site, random, i, true));
        }
        exchange.send(exchange.device.planned(OddPlans.of(site, 12)));
        OddAlerts.each(site).forEach(alert -> exchange.send(exchange.device.of(1, alert)));
        exchange.send(exchange.device.log(HomieDevice.Level.INFO, "a line"));
        exchange.send(exchange.device.atStop());
        return exchange;
    }

    private static List<Exchange> evenings() {
        return Stream.of(
                        OddSites.example(),
                        OddSites.of(1),
                        OddSites.of(2),
                        OddSites.of(3),
                        OddSites.of(4),
                        OddSites.of(5))
                .map(site -> evening(site, 1))
                .toList();
    }

    @Test
    void isVersionThree() {
        assertThat(text(root, "asyncapi")).isEqualTo("3.0.0");
        assertThat(channels)
                .hasSizeGreaterThan(40)
                .allMatch(c -> c.action().equals("send") || c.action().equals("receive"));
    }

    @Test
    void whateverIsSaidStandsThereOnceAndIsOfItsShape() {
        for (Exchange exchange : evenings()) {
            for (Message message : exchange.sent) {
                List<Channel> fitting =
                        channels.stream().filter(c -> c.has(message.topic())).toList();
                assertThat(fitting).as(message.topic()).hasSize(1);
                assertThat(fitting.get(0).action()).isEqualTo("send");
                if (!message.isDeleting()) {
                    assertThat(Shape.faults(
                                    in(fitting.get(0).message(), "payload"), parsed(fitting.get(0), message.text())))
                            .as(message.toString())
                            .isEmpty();
                }
            }
        }
    }

    private static Object parsed(Channel channel, String text) {
        return "application/json".equals(channel.message().get("contentType")) ? new Yaml().<Object>load(text) : text;
    }

    @Test
    void whateverStandsThereIsSaidOrTaken() {
        List<Exchange> evenings = evenings();
        for (Channel channel : channels) {
            boolean said = evenings.stream().anyMatch(e -> e.sent.stream().anyMatch(m -> channel.has(m.topic())));
            assertThat(said).as(channel.name()).isEqualTo(channel.action().equals("send"));
        }
    }

    @Test
    void whateverIsTakenIsTakenAsTheExampleHasIt() {
        Exchange exchange = new Exchange(OddSites.example(), Exchange.open("homie"));
        exchange.connect();
        exchange.tick(OddSites.frame(exchange.site, new Random(1), 0, true));
        TreeSet<String> kinds = new TreeSet<>();
        for (Channel channel : channels) {
            if (channel.action().equals("receive")) {
                String topic = channel.topics()
                        .replaceFirst("^\\[a-z0-9-]\\+/5/\\[a-z0-9-]\\+", exchange.base())
                        .replace("[a-z0-9-]+", "dryer");
                Object example = map(examples(channel.message()).get(0)).get("payload");
                String payload = example instanceof Map<?, ?> json ? JsonText.of(json) : String.valueOf(example);
                assertThat(exchange.device.subscriptions()).anyMatch(filter -> Exchange.matches(filter, topic));
                assertThat(exchange.hear(topic, payload.getBytes(UTF_8), false, false))
                        .as(topic)
                        .isInstanceOfSatisfying(
                                Heard.Asked.class,
                                asked -> kinds.add(asked.order().getClass().getSimpleName()));
            }
        }
        assertThat(kinds).containsExactly("Acknowledge", "HandForecast", "PlanNow", "SetFloor", "StandDown");
    }

    @Test
    void examplesAreOfTheirShape() {
        in(in(root, "components"), "messages").forEach((name, message) -> {
            List<?> examples = examples(map(message));
            assertThat(examples).as(String.valueOf(name)).isNotEmpty();
            examples.forEach(example -> assertThat(Shape.faults(
                            in(map(message), "payload"), map(example).get("payload")))
                    .as(String.valueOf(name))
                    .isEmpty());
        });
    }

    @Test
    void aFlawIsSeen() {
        Map<?, ?> schema = in(in(in(in(root, "components"), "messages"), "incident"), "payload");
        assertThat(Shape.faults(schema, Map.of("id", "A", "more", 1))).hasSizeGreaterThan(10);
    }
}
