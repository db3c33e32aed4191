package rimeward.broker;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rimeward.adapter.config.SiteSettings;
import rimeward.adapter.mqtt.MqttCourier;
import rimeward.adapter.mqtt.Withdrawal;
import rimeward.core.Stepped;
import rimeward.port.HandedReadings;
import rimeward.site.Messaging;
import rimeward.site.Site;

/** Each alert arrives, once and in order, whatever becomes of the broker, and the line is back within a minute. */
@Tag("slow")
class BrokerTest {
    private static final Site SITE = SiteSettings.read(Path.of("..", "config", "tunnel.toml"));
    private static final String ROOT = "homie/5/" + SITE.id() + "/";
    private static final Stepped DECIDED = Decision.of(SITE, 5_000);
    private static final Duration MINUTE = Duration.ofSeconds(60);

    @TempDir
    private Path dir;

    private final Drawer drawer = new Drawer();
    private final List<String> raised = new ArrayList<>();

    @BeforeEach
    void onlyWithTheProgram() {
        assumeTrue(Mosquitto.isInstalled(), "not tried: apt-get install mosquitto mosquitto-clients openssl");
    }

    /** With one decision made, so that there is something to say. */
    private MqttCourier speak(Messaging.Mqtt settings) {
        MqttCourier courier =
                MqttCourier.start(SITE, settings, drawer, order -> {}, HandedReadings.nowhere(), System::nanoTime);
        courier.decided(DECIDED);
        return courier;
    }

    private void raise(MqttCourier courier, int count) {
        for (int i = 0; i < count; i++) {
            raised.add(drawer.raise());
            courier.news();
        }
    }

    private void allArrive(Subscriber grower) {
        await().atMost(MINUTE)
                .untilAsserted(() -> assertThat(
                                grower.texts("$alert").stream().distinct().toList())
                        .isEqualTo(raised));
        await().atMost(MINUTE).until(() -> drawer.waiting().isEmpty());
    }

    private static void isReady(Subscriber grower) {
        await().atMost(MINUTE)
                .untilAsserted(() -> assertThat(grower.lines()).anyMatch(line -> line.endsWith("$state ready")));
    }

    @Test
    void aKilledBrokerCostsNoAlertAndKeepsWhatItHad() throws IOException, InterruptedException {
        try (Mosquitto broker = Mosquitto.begin(dir, SITE.id());
                Subscriber grower = broker.subscribe(ROOT + "#");
                MqttCourier courier = speak(broker.settings(SITE.id()))) {
            isReady(grower);
            raise(courier, 3);
            allArrive(grower);
            await().atMost(MINUTE)
                    .until(() -> Files.exists(dir.resolve("mosquitto.db"))
                            && new String(Files.readAllBytes(dir.resolve("mosquitto.db")), UTF_8)
                                    .contains(raised.get(2)));
            broker.kill();
            raise(courier, 5);
            broker.start();
            await().atMost(MINUTE).until(() -> drawer.waiting().isEmpty());
            try (Subscriber fresh = broker.subscribe(ROOT + "$alert/#")) {
                await().atMost(MINUTE).untilAsserted(() -> {
                    assertThat(fresh.lines()).hasSize(raised.size()).allMatch(line -> line.startsWith("1 "));
                    assertThat(fresh.lines()).allMatch(line -> raised.stream().anyMatch(line::endsWith));
                });
            }
            assertThat(grower.lines())
                    .as("the broker told of its loss")
                    .anyMatch(line -> line.endsWith("$state ready"));
        }
    }

    @Test
    void aFreshSubscriberSeesTheWholePresentStateAlsoOfABrokerThatForgotAll() throws IOException, InterruptedException {
        try (Mosquitto broker = Mosquitto.begin(dir, SITE.id());
                Subscriber grower = broker.subscribe(ROOT + "#");
                MqttCourier courier = speak(broker.settings(SITE.id()))) {
            isReady(grower);
            raise(courier, 3);
            allArrive(grower);
            courier.decided(Decision.of(SITE, 10_000));
            await().atMost(MINUTE)
                    .untilAsserted(() -> assertThat(grower.newest()).containsEntry(ROOT + "alerts/standing", "3"));
            Map<String, String> all = grower.newest();
            sees(broker, all);
            broker.kill();
            Files.deleteIfExists(dir.resolve("mosquitto.db"));
            broker.start();
            sees(broker, all);
        }
    }

    private static void sees(Mosquitto broker, Map<String, String> all) throws IOException {
        try (Subscriber fresh = broker.subscribe(ROOT + "#")) {
            await().atMost(MINUTE)
                    .untilAsserted(() -> assertThat(fresh.newest()).isEqualTo(all));
        }
    }

    @Test
    void aTunnelIsTakenOffItsBroker() throws IOException, InterruptedException {
        try (Mosquitto broker = Mosquitto.begin(dir, SITE.id());
                Subscriber grower = broker.subscribe(ROOT + "#")) {
            MqttCourier courier = speak(broker.settings(SITE.id()));
            isReady(grower);
            raise(courier, 3);
            allArrive(grower);
            courier.close();
            await().atMost(MINUTE)
                    .untilAsserted(() -> assertThat(grower.newest()).containsEntry(ROOT + "$state", "disconnected"));
            int topics = grower.newest().size();
            assertThat(Withdrawal.of(SITE, broker.settings(SITE.id())))
                    .as("besides the state")
                    .isEqualTo(topics - 1);
            await().atMost(MINUTE)
                    .untilAsserted(() -> assertThat(grower.newest()).isEmpty());
            assertThat(grower.lines().get(grower.lines().size() - topics))
                    .as("the first to go")
                    .isEqualTo("0 " + ROOT + "$state ");
        }
    }

    private static String last(List<String> texts) {
        return texts.get(texts.size() - 1);
    }

    @Test
    void aFrozenBrokerIsGivenUpAndFoundAgain() throws IOException, InterruptedException {
        try (Mosquitto broker = Mosquitto.begin(dir, SITE.id());
                Subscriber grower = broker.subscribe(ROOT + "#");
                MqttCourier courier = speak(broker.settings(SITE.id()))) {
            isReady(grower);
            broker.signal("STOP");
            raise(courier, 3);
            await().pollDelay(Duration.ofSeconds(40))
                    .atMost(MINUTE)
                    .until(() -> drawer.waiting().size() == 3);
            broker.signal("CONT");
            await().atMost(MINUTE).until(() -> drawer.waiting().isEmpty());
            assertThat(grower.texts("$alert").stream().distinct().toList()).isEqualTo(raised);
        }
    }

    @Test
    void aNetworkThatBreaksWithinAMessageCostsNone() throws IOException, InterruptedException {
        try (Mosquitto broker = Mosquitto.begin(dir, SITE.id());
                Subscriber grower = broker.subscribe(ROOT + "#");
                CutProxy network = new CutProxy(broker.port());
                MqttCourier courier = speak(broker.settings(SITE.id(), network.port()))) {
            isReady(grower);
            for (int bytes : new int[] {1, 20, 60}) {
                network.cutAfter(bytes);
                raise(courier, 2);
                allArrive(grower);
            }
            assertThat(grower.lines()).anyMatch(line -> line.endsWith("$state lost"));
        }
    }

    @Test
    void aChangedPasswordIsReadFromItsFile() throws IOException, InterruptedException {
        try (Mosquitto broker = Mosquitto.begin(dir, SITE.id())) {
            broker.passwordAtBroker(SITE.id(), "another");
            broker.signal("HUP");
            try (Subscriber grower = broker.subscribe(ROOT + "#");
                    MqttCourier courier = speak(broker.settings(SITE.id()))) {
                raise(courier, 2);
                await().pollDelay(Duration.ofSeconds(5))
                        .until(() -> drawer.waiting().size() == 2);
                Files.writeString(dir.resolve(SITE.id() + ".password"), "another\n", UTF_8);
                allArrive(grower);
            }
        }
    }

    @Test
    void aBrokerThatForbidsTheTopicIsToldOfAndTriedAgain() throws IOException, InterruptedException {
        try (Mosquitto broker = Mosquitto.begin(dir, SITE.id())) {
            String acl = Files.readString(dir.resolve("acl"), UTF_8);
            Files.writeString(dir.resolve("acl"), acl.replace("homie/5/%u/#", "homie/5/%u/+"), UTF_8);
            broker.signal("HUP");
            try (Subscriber grower = broker.subscribe(ROOT + "#");
                    MqttCourier courier = speak(broker.settings(SITE.id()))) {
                isReady(grower);
                raise(courier, 2);
                await().atMost(MINUTE).until(courier::isFailing);
                Files.writeString(dir.resolve("acl"), acl, UTF_8);
                broker.signal("HUP");
                allArrive(grower);
                await().atMost(MINUTE).until(() -> !courier.isFailing());
            }
        }
    }

    @Test
    void noTunnelReachesIntoAnothersTree() throws IOException, InterruptedException {
        try (Mosquitto broker = Mosquitto.begin(dir, SITE.id(), "low-field");
                Subscriber grower = broker.subscribe("homie/5/#");
                MqttCourier stranger = speak(broker.settings("low-field"))) {
            raise(stranger, 1);
            AtomicLong elapsedMs = new AtomicLong(5_000);
            await().atMost(Duration.ofSeconds(90))
                    .until(
                            () -> { // it gives its first echo up by the service's own time
                                stranger.decided(Decision.of(SITE, elapsedMs.addAndGet(1_000)));
                                return stranger.isFailing();
                            });
            assertThat(grower.lines()).isEmpty();
        }
    }

    @Test
    void anOrderlyEndIsSeenAsSuch() throws IOException, InterruptedException {
        try (Mosquitto broker = Mosquitto.begin(dir, SITE.id());
                Subscriber grower = broker.subscribe(ROOT + "$state")) {
            MqttCourier courier = speak(broker.settings(SITE.id()));
            isReady(grower);
            courier.close();
            await().atMost(MINUTE)
                    .untilAsserted(() -> assertThat(last(grower.lines())).endsWith("$state disconnected"));
        }
    }
}
