package rimeward.broker;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rimeward.adapter.config.SiteSettings;
import rimeward.alert.Alert;
import rimeward.assembly.Audience;
import rimeward.assembly.Service;
import rimeward.core.Stepped;
import rimeward.core.decision.DutyLaw;
import rimeward.core.order.Answer;
import rimeward.site.Site;

/** The whole service goes on while its broker accepts and never answers, and tells everything afterwards. */
@Tag("slow")
class FrozenBrokerTest implements Audience {
    private static final Site SETTINGS = SiteSettings.read(Path.of("..", "config", "tunnel.toml"));
    private static final long FROM_MS = 1_764_000_000_000L;
    private static final long THREE_HOURS_MS = 10_800_000;

    /** More than the line takes to give a broker up and to try again. */
    private static final Duration FROZEN = Duration.ofSeconds(50);

    private static final Duration WAIT = Duration.ofSeconds(90);

    @TempDir
    private Path dir;

    private final AtomicLong lastTick = new AtomicLong();
    private final AtomicLong missed = new AtomicLong();
    private final List<String> told = new CopyOnWriteArrayList<>();

    @BeforeEach
    void onlyWithTheProgram() {
        assumeTrue(Mosquitto.isInstalled(), "not tried: apt-get install mosquitto mosquitto-clients openssl");
    }

    @Test
    void noTickIsMissedAndNoAlertLost() throws IOException, InterruptedException {
        try (Mosquitto broker = Mosquitto.begin(dir, SETTINGS.id());
                Subscriber grower = broker.subscribe("homie/5/" + SETTINGS.id() + "/#")) {
            Site site = SETTINGS.with(broker.settings(SETTINGS.id()));
            FailingSensors around = new FailingSensors(site, FROM_MS, 400);
            Path data = Files.createDirectory(dir.resolve("data"));
            Service service = new Service(site, new DutyLaw(), data, around, this, System::nanoTime);
            Thread control = new Thread(service::run, "control");
            control.start();
            await().atMost(WAIT).until(() -> Arrived.onceAt(grower).size() > 1);
            long threads = threads();

            broker.signal("STOP");
            long frozenAt = lastTick.get();
            int toldBefore = told.size();
            await().pollDelay(FROZEN)
                    .atMost(FROZEN.plus(WAIT))
                    .until(() -> (lastTick.get() - frozenAt) * FailingSensors.TICK_MS > THREE_HOURS_MS);
            assertThat(told).hasSizeGreaterThan(toldBefore + 1);
            assertThat(threads()).isLessThanOrEqualTo(threads + 1);
            broker.signal("CONT");

            List<String> before = List.copyOf(told);
            await().atMost(WAIT)
                    .untilAsserted(() -> assertThat(Arrived.onceAt(grower)).startsWith(before.toArray(String[]::new)));
            around.end();
            control.join();
            assertThat(missed).hasValue(0);
        }
    }

    /** Without those that only wait for the programs this test has started. */
    private static long threads() {
        return Thread.getAllStackTraces().keySet().stream()
                .filter(thread -> !thread.getName().startsWith("process reaper"))
                .count();
    }

    @Override
    public void decided(Stepped stepped) {
        long number = stepped.outcome().frame().tick().number();
        missed.addAndGet(number - lastTick.getAndSet(number) - 1);
    }

    @Override
    public void told(Alert alert) {
        told.add(Arrived.words(alert));
    }

    @Override
    public void says(String line) {}

    @Override
    public void answered(Answer answer) {}
}
