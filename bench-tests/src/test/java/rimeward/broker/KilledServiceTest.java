package rimeward.broker;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rimeward.adapter.config.SiteSettings;
import rimeward.alert.Alert;

/** kill −9 of the whole service between an alert and its arrival, at random moments: each that was in the record arrives all the same. */
@Tag("slow")
class KilledServiceTest {
    static final String MARK = "in the record: ";

    /** Enough for every submission; {@code -Dkills=200} for a whole trial. */
    private static final int KILLS = Integer.getInteger("kills", 30);

    private static final long SEED = 20_251_127;
    private static final long DAY_S = 86_400;
    private static final long FROM_S = 1_764_000_000;

    /** The line is up within about half of this after the first alert. */
    private static final int LONGEST_MS = 800;

    private static final Path SETTINGS = Path.of("..", "config", "tunnel.toml");
    private static final String ID = SiteSettings.read(SETTINGS).id();

    @TempDir
    private Path dir;

    private final List<String> promised = new CopyOnWriteArrayList<>();

    @BeforeEach
    void onlyWithTheProgram() {
        assumeTrue(Mosquitto.isInstalled(), "not tried: apt-get install mosquitto mosquitto-clients openssl");
    }

    @Test
    void eachAlertOfTheRecordArrives() throws IOException, InterruptedException {
        Random chance = new Random(SEED);
        Files.createDirectory(dir.resolve("data"));
        try (Mosquitto broker = Mosquitto.begin(dir, ID);
                Subscriber grower = broker.subscribe("homie/5/" + ID + "/#")) {
            for (int kill = 0; kill < KILLS; kill++) {
                Process service = start(broker, kill, 20);
                Thread reader = reads(service);
                int before = promised.size();
                await().atMost(Duration.ofSeconds(60)).until(() -> promised.size() > before || !service.isAlive());
                service.waitFor(chance.nextInt(LONGEST_MS), TimeUnit.MILLISECONDS);
                service.toHandle().destroyForcibly(); // of the process itself it would close its output unread
                reader.join();
            }
            Process last = start(broker, KILLS, 0);
            reads(last);
            try {
                await().atMost(Duration.ofSeconds(
                                90 + promised.size() / 10)) // the last one has the whole backlog to tell
                        .until(() -> Set.copyOf(Arrived.onceAt(grower)).containsAll(promised));
            } finally {
                last.toHandle().destroyForcibly();
            }
            assertThat(promised).hasSizeGreaterThan(KILLS);
            assertThat(Arrived.at(grower).stream().map(Arrived::number).distinct())
                    .as("in order")
                    .isSorted();
            await("the broker tells of a service that was killed")
                    .until(() -> grower.lines().stream().anyMatch(line -> line.endsWith("$state lost")));
        }
    }

    private Process start(Mosquitto broker, int run, int failsEvery) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        DyingService.class.getName(),
                        SETTINGS.toString(),
                        dir.resolve("data").toString(),
                        dir.toString(),
                        Integer.toString(broker.port()),
                        Long.toString(FROM_S + run * DAY_S),
                        Integer.toString(failsEvery))
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
    }

    private Thread reads(Process service) {
        Thread reader = new Thread(() -> read(service), "promises");
        reader.setDaemon(true);
        reader.start();
        return reader;
    }

    /** Only whole lines: what a kill cut off was never promised. */
    private void read(Process service) {
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(service.getInputStream(), UTF_8))) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                if (line.startsWith(MARK) && endsWithAChange(line)) {
                    promised.add(line.substring(MARK.length()));
                }
            }
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static boolean endsWithAChange(String line) {
        for (Alert.Change change : Alert.Change.values()) {
            if (line.endsWith(" " + change)) {
                return true;
            }
        }
        return false;
    }
}
