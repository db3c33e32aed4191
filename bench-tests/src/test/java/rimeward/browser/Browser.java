package rimeward.browser;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import java.util.logging.Level;
import java.util.stream.Stream;
import org.awaitility.Awaitility;
import org.jspecify.annotations.Nullable;
import org.openqa.selenium.By;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/** Chromium without a screen: as wide as a phone or a desk, on light or dark paper, with all that it asks for and complains of written down. */
final class Browser implements AutoCloseable {
    private static final Path CHROMIUM = Path.of("/usr/bin/chromium");
    private static final Path DRIVER = Path.of("/usr/bin/chromedriver");
    private static final Duration PATIENCE = Duration.ofMinutes(1);

    private final ChromeDriver driver;
    private final List<String> requests = new ArrayList<>();

    Browser() {
        ChromeOptions options = new ChromeOptions();
        options.setBinary(CHROMIUM.toString());
        options.addArguments(
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-dev-shm-usage",
                "--lang=en-GB",
                "--accept-lang=en-GB",
                "--hide-scrollbars");
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.ALL);
        logs.enable(LogType.PERFORMANCE, Level.ALL);
        options.setCapability("goog:loggingPrefs", logs);
        ChromeDriverService service = new ChromeDriverService.Builder()
                .usingDriverExecutable(DRIVER.toFile())
                .build();
        driver = new ChromeDriver(service, options);
        driver.manage()
                .timeouts()
                .scriptTimeout(Duration.ofMinutes(3)); // for axe-core, on a machine that has much else to do
        driver.executeCdpCommand("Emulation.setLocaleOverride", Map.of("locale", "en-GB"));
    }

    static boolean isInstalled() {
        return Stream.of(CHROMIUM, DRIVER).allMatch(Files::isExecutable);
    }

    /** @param paper "light" or "dark", as the device has it */
    Browser as(int widthPx, int heightPx, String paper) {
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of(
                        "width",
                        widthPx,
                        "height",
                        heightPx,
                        "deviceScaleFactor",
                        widthPx < 600 ? 2 : 1,
                        "mobile",
                        widthPx < 600));
        driver.executeCdpCommand(
                "Emulation.setEmulatedMedia",
                Map.of("features", List.of(Map.of("name", "prefers-color-scheme", "value", paper))));
        return this;
    }

    Browser open(String address) {
        driver.get("about:blank");
        driver.get(address);
        return this;
    }

    /** Turns to an empty page, so that nobody misses a service that ends. */
    void leave() {
        driver.get("about:blank");
    }

    /** Text of the first that is there, as a person sees it: all spaces alike. */
    String text(String css) {
        return one(css).getText().replace('\u00a0', ' ');
    }

    WebElement one(String css) {
        return await(css, () -> {
            List<WebElement> all = driver.findElements(By.cssSelector(css));
            return all.isEmpty() ? null : all.get(0);
        });
    }

    List<WebElement> all(String css) {
        return driver.findElements(By.cssSelector(css));
    }

    /** Presses the first button, link or choice with this text. */
    void press(String text) {
        String path = "//button[normalize-space()='" + text + "']|//a[normalize-space()='" + text + "']";
        await(
                        text,
                        () -> driver.findElements(By.xpath(path)).stream()
                                .filter(WebElement::isDisplayed)
                                .findFirst()
                                .orElse(null))
                .click();
    }

    @Nullable
    Object run(String script, Object... args) {
        return driver.executeScript(script, args);
    }

    /** Runs a script that calls its first argument back with what it found. */
    @Nullable
    Object runLong(String script) {
        return driver.executeAsyncScript(script);
    }

    /** Until it is so; what is waited for is told in words. */
    void until(String what, BooleanSupplier isSo) {
        await(what, () -> isSo.getAsBoolean() ? Boolean.TRUE : null);
    }

    private <T> T await(String what, Supplier<@Nullable T> look) {
        return Objects.requireNonNull(Awaitility.await(what)
                .atMost(PATIENCE)
                .pollDelay(Duration.ZERO)
                .pollInterval(Duration.ofMillis(50))
                .pollInSameThread()
                .ignoreException(StaleElementReferenceException.class)
                .until(look::get, Objects::nonNull));
    }

    /** What the browser complained of since it was last asked. */
    List<String> complaints() {
        return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
                .filter(e -> e.getLevel().intValue() >= Level.WARNING.intValue())
                .map(LogEntry::getMessage)
                .toList();
    }

    /** Everything that was asked of the network so far, whatever became of it. */
    List<String> requests() {
        for (LogEntry entry : driver.manage().logs().get(LogType.PERFORMANCE)) {
            String message = entry.getMessage();
            if (message.contains("\"Network.requestWillBeSent\"")) {
                requests.add(message.replaceAll("(?s).*\"request\":\\{.*?\"url\":\"([^\"]*)\".*", "$1"));
            }
        }
        return requests;
    }

    /** What axe-core finds against WCAG 2.2 AA, each finding in a line. */
    List<String> shutOut() {
        run(axe());
        Object found = driver.executeAsyncScript("""
                const done = arguments[0];
                axe.run(document, {runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"]}).then(
                  r => done(r.violations.map(v => v.id + ": " + v.help + " | " + v.nodes.map(n => n.target + " " + n.failureSummary.replace(/\\s+/g, " ")).slice(0, 4).join(" || "))),
                  e => done(["axe failed: " + e]))""");
        return found instanceof List<?> list
                ? list.stream().map(String::valueOf).toList()
                : List.of("axe said nothing");
    }

    private static String axe() {
        try (InputStream in = Objects.requireNonNull(Browser.class.getResourceAsStream("/axe.min.js"))) {
            return new String(in.readAllBytes(), UTF_8);
        } catch (IOException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    /** What is on the screen, without scrolling. */
    void shoot(Path file) throws IOException {
        Files.createDirectories(file.getParent());
        Files.write(file, driver.getScreenshotAs(OutputType.BYTES));
    }

    /** The whole page as on one long sheet. */
    void shootWhole(Path file) throws IOException {
        Files.createDirectories(file.getParent());
        Map<String, Object> shot = driver.executeCdpCommand(
                "Page.captureScreenshot", Map.of("captureBeyondViewport", true, "format", "png"));
        Files.write(file, Base64.getDecoder().decode(String.valueOf(shot.get("data"))));
    }

    @Override
    public void close() {
        driver.quit();
    }
}
