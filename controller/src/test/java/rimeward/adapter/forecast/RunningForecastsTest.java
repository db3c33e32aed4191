package rimeward.adapter.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rimeward.core.outlook.Forecast;
import rimeward.fixture.Sites;
import rimeward.site.Forecasting;
import rimeward.site.Site;

/** The whole source as a service has it: with its thread, a real file, a real server on loopback. */
class RunningForecastsTest {
    private final FakeClock clock = new FakeClock(Samples.ISSUED_S + 900);

    @TempDir
    Path folder;

    @Test
    void aSiteWithoutASourceHasNoForecastAndNoTrouble() {
        try (RunningForecasts none = of(new Forecasting.None())) {
            none.askAnew();
            assertThat(none.newest()).isEmpty();
            assertThat(none.trouble()).isEmpty();
        }
    }

    @Test
    void aFile() throws IOException {
        Path file = folder.resolve("forecast.json");
        Files.writeString(file, Samples.text("night.json"));
        try (RunningForecasts running = of(new Forecasting.FromFile(file.toString()))) {
            await().until(() -> running.newest().isPresent());
            assertThat(running.newest().orElseThrow().source()).isEqualTo("the file " + file);
        }
    }

    @Test
    void aServiceIsAskedWhenItIsTimeAndSoonerOnlyAsFarAsItsAnswerAllows() throws IOException {
        AtomicInteger questions = new AtomicInteger();
        HttpServer server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        server.createContext("/", exchange -> {
            questions.incrementAndGet();
            byte[] body = Samples.bytes("compact.json");
            exchange.sendResponseHeaders(200, body.length); // no Expires: an hour
            exchange.getResponseBody().write(body);
            exchange.close();
        });
        server.start();
        String url = "http://127.0.0.1:" + server.getAddress().getPort() + "/";
        try (RunningForecasts running = of(new Forecasting.FromService(url, 54.98, -2.36, "grower@hallin.example"))) {
            running.askAnew();
            assertThat(running.newest()).isEmpty(); // the first half-minute nobody is asked
            clock.pass(0.01);
            running.askAnew();
            await().until(() -> running.newest().isPresent());
            clock.pass(0.99);
            running.askAnew();
            clock.pass(0.02);
            running.askAnew();
            await().until(() -> questions.get() == 2); // not asked in between: that would be three
        } finally {
            server.stop(0);
        }
    }

    @Test
    void aBugInASourceDoesNotEndItAndNeverReachesWhoeverLooks() {
        Stumbling source = new Stumbling();
        try (RunningForecasts running = new RunningForecasts(source, () -> {}, clock::nanos).start()) {
            await().until(() -> source.attempts.get() == 1);
            clock.pass(1.1);
            running.askAnew();
            await().until(() -> source.attempts.get() == 2);
        }
    }

    @Test
    void closingEndsTheThreadEvenWhileItWaitsForHours() throws InterruptedException {
        CountDownLatch ended = new CountDownLatch(1);
        RunningForecasts running = new RunningForecasts(new NoSource(), ended::countDown, clock::nanos).start();
        running.close();
        ended.await();
        await().until(() -> Thread.getAllStackTraces().keySet().stream()
                .noneMatch(thread -> thread.getName().equals("forecast")));
    }

    private RunningForecasts of(Forecasting forecasting) {
        Site site = Sites.metered().with(forecasting);
        return ForecastSources.of(site, clock::wall, clock::nanos);
    }

    private static final class Stumbling implements Source {
        private final AtomicInteger attempts = new AtomicInteger();

        @Override
        public String name() {
            return "stumbling";
        }

        @Override
        public Due first(long nowMs) {
            return new Due(nowMs, nowMs);
        }

        @Override
        public Due attempt(long nowMs) {
            attempts.incrementAndGet();
            throw new IllegalStateException("planted");
        }

        @Override
        public Optional<Forecast> newest() {
            return Optional.empty();
        }

        @Override
        public Optional<String> trouble() {
            return Optional.empty();
        }
    }
}
