package rimeward.browser;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page on the whole service in a simulated tunnel, a day in two minutes: what stands on the screen is what the service says. */
@Tag("slow")
final class LivePageTest {
    private static final Path SHOTS = Path.of("target", "screenshots");

    @TempDir
    Path dir;

    @Test
    void whatStandsOnTheScreenIsWhatTheServiceSays() throws IOException {
        assumeTrue(
                Browser.isInstalled(),
                "chromium and chromium-driver are not installed: apt-get install chromium chromium-driver");
        int port = sparePort();
        Process live = begin(port);
        try (Browser browser = new Browser()) {
            browser.until("the service answers", () -> answers(port));
            String address = "http://127.0.0.1:" + port;
            browser.as(1280, 844, "light").open(address);
            Shots.settled(browser);
            List<?> differences = (List<?>) Objects.requireNonNull(browser.runLong(FIVE_BEATS));
            assertThat(differences).isEmpty();
            anOrderNeedsTheToken(browser, address);
            for (String sheet : List.of("now", "tonight", "record", "tunnel", "hands")) {
                browser.as(1280, 844, "light").open(address + "/#" + sheet);
                Shots.settled(browser);
                assertThat(browser.shutOut()).as(sheet).isEmpty();
                Shots.shoot(browser, SHOTS, "live-" + sheet + "-1280-light.png");
            }
            assertThat(browser.run(NIGHTS_AS_TOLD)).isEqualTo(List.of());
            assertThat(browser.complaints()).allMatch(text -> text.contains("401"));
            assertThat(browser.requests())
                    .isNotEmpty()
                    .allMatch(url -> url.matches("(http://127\\.0\\.0\\.1:|data:|about:|chrome).*"));
        } finally {
            live.destroy();
        }
    }

    /** On five beats of the line: each number of the first sheet against what that very beat told. */
    private static final String FIVE_BEATS = """
            const done = arguments[0], wrong = [];
            const told = v => v === undefined ? "–" : v.toFixed(1).replace("-", "\u2212");
            const line = new EventSource("/api/live");
            let beats = 0;
            line.addEventListener("now", event => {
              const now = JSON.parse(event.data);
              setTimeout(() => {
                const shown = document.querySelector("main").textContent;
                const date = document.querySelector("#date").textContent;
                const same = new Intl.DateTimeFormat(undefined, {timeZone: now.site.zone, hour: "2-digit", minute: "2-digit"}).format(new Date(now.epochS * 1000));
                if (date.endsWith(same)) {
                  for (const part of [told(now.plants.coldestC) + "\u00a0°C", told(now.air.dewPointC) + "\u00a0°C", told(now.outside.airC) + "\u00a0°C", now.plants.coldestSensor]) {
                    if (!shown.includes(part)) { wrong.push(same + ": " + part); }
                  }
                  for (const m of now.holding.machines) {
                    if (!shown.includes(m.id + (m.closed ? " on" : " off"))) { wrong.push(same + ": " + m.id); }
                  }
                  beats++;
                }
                if (beats === 5) { line.close(); done(wrong); }
              }, 100);
            });""";

    /** Every night on the list against /api/nights. */
    private static final String NIGHTS_AS_TOLD = """
            return fetch("/api/nights").then(r => r.json()).then(told => {
              location.hash = "#record";
              return new Promise(done => setTimeout(() => {
                const rows = [...document.querySelectorAll("main tbody tr")].map(r => r.textContent);
                done(told.nights.slice(1).filter((n, i) => !rows[i + 1]?.includes(n.lowestC.toFixed(1).replace("-", "\u2212")) || !rows[i + 1]?.includes(n.kwh.toFixed(1))).map(n => n.night));
              }, 1000));
            })""";

    private void anOrderNeedsTheToken(Browser browser, String address) throws IOException {
        browser.open(address + "/#hands");
        Shots.settled(browser);
        browser.until("machines", () -> !browser.all("#machines button").isEmpty());
        browser.press("Out of use");
        browser.press("Do it");
        show(browser, "not-the-token");
        browser.until("it is refused", () -> browser.text("#answer").startsWith("Refused:"));
        browser.press("Out of use");
        browser.press("Do it");
        show(browser, Files.readString(dir.resolve("page-token"), UTF_8).strip());
        browser.until("it is done", () -> browser.text("#answer").startsWith("Done:"));
    }

    private static void show(Browser browser, String token) {
        browser.until("the slip", () -> browser.one("#token").isDisplayed());
        browser.one("#token").sendKeys(token);
        browser.press("Show it");
    }

    private Process begin(int port) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        "rimeward.sim.app.Main",
                        "live",
                        Path.of("..", "config", "scenarios", "sensor-lost.toml").toString(),
                        "--speed",
                        "720",
                        "--broker",
                        "none",
                        "--page",
                        Integer.toString(port),
                        "--data",
                        dir.toString())
                .redirectErrorStream(true)
                .redirectOutput(dir.resolve("live.log").toFile())
                .start();
    }

    private static boolean answers(int port) {
        try (java.net.Socket tried = new java.net.Socket(InetAddress.getLoopbackAddress(), port)) {
            return tried.isConnected();
        } catch (IOException notYet) {
            return false;
        }
    }

    private static int sparePort() throws IOException {
        try (ServerSocket any = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return any.getLocalPort();
        }
    }
}
