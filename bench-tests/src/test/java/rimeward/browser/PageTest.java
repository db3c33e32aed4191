package rimeward.browser;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;

/** The page in a real Chromium, on a stand-in service: what a person sees, may press, and is never shown. */
@Tag("slow")
final class PageTest {
    private static final Path SHOTS = Path.of("target", "screenshots");
    private static final int FIRST_VIEW_BYTES = 150_000; // of issue 6

    private static @Nullable Browser opened;

    @BeforeAll
    static void open() {
        assumeTrue(
                Browser.isInstalled(),
                "chromium and chromium-driver are not installed: apt-get install chromium chromium-driver");
        opened = new Browser();
    }

    @AfterAll
    static void close() {
        if (opened != null) {
            opened.close();
        }
    }

    private static Browser browser() {
        return Objects.requireNonNull(opened);
    }

    private static StandIn play(String story) throws IOException {
        return new StandIn(0, story, browser()::leave);
    }

    @AfterEach
    void nothingIsComplainedOfAndNothingLeavesTheHost() {
        assertThat(browser().complaints()).isEmpty();
        assertThat(browser().requests())
                .isNotEmpty()
                .allMatch(url -> url.matches("(http://127\\.0\\.0\\.1:|data:|about:|blob:|chrome).*"));
    }

    static List<String> stories() {
        return Story.ALL;
    }

    /** All in one case, and in the others those that look different there. */
    private static List<String> sheetsOf(String story) {
        return switch (story) {
            case "frost-night" -> Shots.SHEETS;
            case "nothing-yet" -> List.of("now", "tonight", "record", "tunnel");
            case "hostile-names" -> List.of("now", "hands");
            default -> List.of("now");
        };
    }

    /** Every look of one case; of the others a phone by day and a desk by night. */
    private static List<String> widthsOf(String story, String paper) {
        if (story.equals("frost-night")) {
            return Shots.WIDTHS_PX;
        }
        return List.of(paper.equals("light") ? "390" : "1280");
    }

    @ParameterizedTest
    @MethodSource("stories")
    void everySheetIsOpenToEverybodyInEveryStateAndWidth(String story) throws IOException {
        List<String> shutOut = new ArrayList<>();
        try (StandIn service = play(story)) {
            for (String sheet : sheetsOf(story)) {
                for (String paper : Shots.PAPERS) {
                    for (String widthPx : widthsOf(story, paper)) {
                        String where = story + "-" + sheet.replace('/', '-') + "-" + widthPx + "-" + paper;
                        browser().as(Integer.parseInt(widthPx), 844, paper).open(service.address() + "/#" + sheet);
                        Shots.settled(browser());
                        browser().shutOut().forEach(finding -> shutOut.add(where + ": " + finding));
                        Shots.shoot(browser(), SHOTS, where + ".png");
                    }
                }
                nothingIsCutOffOnASmallPhone(sheet);
            }
        }
        assertThat(shutOut).isEmpty();
    }

    private static void nothingIsCutOffOnASmallPhone(String sheet) {
        browser().as(320, 640, "light");
        browser()
                .until(
                        sheet + " fits 320 px",
                        () -> Long.valueOf(320).equals(browser().run("return document.documentElement.scrollWidth")));
    }

    @Test
    void fourQuestionsAreAnsweredOnTheFirstScreen() throws IOException {
        try (StandIn service = play("frost-night")) {
            browser().as(390, 844, "light").open(service.address());
            Shots.settled(browser());
            for (String entry : List.of("#plants", "#holding", "#tonight-row", "#hands-row")) {
                assertThat(browser().one(entry).getRect().y
                                + browser().one(entry).getRect().height)
                        .as(entry)
                        .isLessThanOrEqualTo(844);
            }
            assertThat(browser().text("#plants")).contains("Safe", "5.2 °C", "north bench", "1.2 K above the floor");
            assertThat(browser().text("#holding"))
                    .contains("The heater holds the floor", "heater-1 on", "heater-2 off");
            assertThat(browser().text("#tonight-row")).contains("5.0 °C", "2 %", "38.0 kWh", "£8.46");
            assertThat(browser().text("#hands-row")).contains("Empty the dryer's tank");
        }
    }

    @Test
    void whatCannotWaitComesRightAfterThePlants() throws IOException {
        try (StandIn service = play("alert-stands")) {
            browser().as(390, 844, "light").open(service.address());
            Shots.settled(browser());
            assertThat(browser().text("#plants")).contains("Below the floor");
            assertThat(browser().one("#hands-row").getRect().y)
                    .isLessThan(browser().one("#holding").getRect().y);
            assertThat(browser().one("#hands-row button").getRect().y).isLessThan(844 - 24);
        }
    }

    @Test
    void degreesAreTheReadersAndAreKept() throws IOException {
        try (StandIn service = play("frost-night")) {
            browser().as(390, 844, "light").open(service.address());
            Shots.settled(browser());
            browser().one("#degrees option[value='F']").click();
            browser().until("Fahrenheit", () -> browser().text("#plants").contains("41.4 °F"));
            assertThat(browser().text("#plants"))
                    .contains("2.2 °F above the floor of 39.2 °F")
                    .doesNotContain("°C");
            browser().open(service.address());
            browser().until("it is kept", () -> browser().text("#plants").contains("41.4 °F"));
            browser().one("#degrees option[value='C']").click();
            browser().until("Celsius", () -> browser().text("#plants").contains("5.2 °C"));
        }
    }

    @Test
    void paperIsTheReadersWhateverTheDeviceHas() throws IOException {
        try (StandIn service = play("frost-night")) {
            browser().as(390, 844, "dark").open(service.address());
            Shots.settled(browser());
            String night = ground();
            browser().one("#paper option[value='day']").click();
            browser().until("light paper", () -> !ground().equals(night));
            browser().one("#paper option[value='']").click();
            browser().until("dark paper", () -> ground().equals(night));
        }
    }

    private static String ground() {
        return String.valueOf(browser().run("return getComputedStyle(document.documentElement).backgroundColor"));
    }

    @Test
    void whatChangesIsSeenAtOnce() throws IOException {
        try (StandIn service = play("frost-night")) {
            browser().as(390, 844, "light").open(service.address());
            Shots.settled(browser());
            long beforeNs = System.nanoTime();
            service.say(service.says("/api/now")
                    .replace("5.2", "4.7")
                    .replace(String.valueOf(Story.AT_S), String.valueOf(Story.AT_S + 5)));
            browser().until("the new reading", () -> browser().text("#plants").contains("4.7 °C"));
            System.out.println("A change is seen after " + (System.nanoTime() - beforeNs) / 1_000_000 + " ms.");
        }
    }

    @Test
    void whatIsOldIsNeverShownAsNew() throws IOException {
        try (StandIn service = play("frost-night")) {
            service.say(service.says("/api/now").replace("\"ageS\": 1.2", "\"ageS\": 95"));
            browser().as(390, 844, "light").open(service.address());
            browser().until("it is said", () -> browser().text("#heard").equals("no longer heard"));
            assertThat(browser().text("#lost")).contains("its readings stand still", "What stands below is old");
            assertThat(browser().text("#plants"))
                    .contains("Not heard", "Last heard at 22:14:00")
                    .doesNotContain("Safe\n");
            assertThat(browser().shutOut()).isEmpty();
            Shots.shoot(browser(), SHOTS, "old-now-390-light.png");
        }
    }

    @Test
    void anAlertIsAcknowledgedWithTheTokenOnly() throws IOException {
        try (StandIn service = play("alert-stands")) {
            browser().as(390, 844, "light").open(service.address());
            Shots.settled(browser());
            browser().press("I have seen it");
            assertThat(service.asked()).isEmpty();
            show("not-the-token");
            browser().until("the refusal", () -> browser().text("#answer").contains("Refused: This is not the token."));
            assertThat(service.asked()).isEmpty();
            complaintOfRefusal();
            browser().press("I have seen it");
            show(StandIn.TOKEN);
            browser().until("asked", () -> service.asked().size() == 1);
            assertThat(service.asked())
                    .containsExactly("{\"order\":\"acknowledge\",\"incident\":\"floor-crossed-hallin-rigg-3\"}");
            browser().press("I have seen it");
            browser()
                    .until(
                            "asked without the token again",
                            () -> service.asked().size() == 2);
            service.say(service.says("/api/now")
                    .replace(
                            "\"alerts\"",
                            "\"answer\":{\"epochS\":" + (Story.AT_S + 6)
                                    + ",\"granted\":true,\"text\":\"floor-crossed is acknowledged.\"},\"alerts\""));
            browser()
                    .until(
                            "the answer",
                            () -> browser().text("#answer").contains("Done: floor-crossed is acknowledged."));
        }
    }

    /** The browser itself tells of a refused request; that is no fault of the page. */
    private static void complaintOfRefusal() {
        assertThat(browser().complaints()).allMatch(text -> text.contains("401"));
    }

    private static void show(String token) {
        browser().until("the slip", () -> browser().one("#token").isDisplayed());
        browser().one("#token").sendKeys(token);
        browser().press("Show it");
    }

    @Test
    void aMachineIsTakenOutOfUseOnlyAfterASecondLook() throws IOException {
        try (StandIn service = play("frost-night")) {
            browser().as(1280, 844, "light").open(service.address() + "/#hands");
            Shots.settled(browser());
            browser().until("machines", () -> !browser().all("#machines button").isEmpty());
            browser().press("Out of use");
            assertThat(browser().text("#slip-sure"))
                    .contains("Take heater-1 out of use?", "even if the plants freeze", "unplug it");
            browser().all("#slip-sure [data-no]").get(0).click();
            assertThat(service.asked()).isEmpty();
            browser().press("Out of use");
            browser().press("Do it");
            show(StandIn.TOKEN);
            browser().until("asked", () -> !service.asked().isEmpty());
            assertThat(service.asked())
                    .containsExactly("{\"order\":\"standDown\",\"machine\":\"heater-1\",\"minutes\":30}");
        }
    }

    @Test
    void anotherFloorIsAskedForInTheReadersDegrees() throws IOException {
        try (StandIn service = play("frost-night")) {
            browser().as(1280, 844, "light").open(service.address() + "/#hands");
            Shots.settled(browser());
            browser().one("#floor").sendKeys(Keys.chord(Keys.CONTROL, "a"), "3");
            browser().press("Ask for it");
            assertThat(browser().one("#slip-sure").isDisplayed())
                    .as("below what may be asked for")
                    .isFalse();
            browser().one("#floor").sendKeys(Keys.chord(Keys.CONTROL, "a"), "5");
            browser().press("Ask for it");
            assertThat(browser().text("#slip-sure")).contains("Hold a floor of 5.0 °C?", "higher than now");
            browser().press("Do it");
            show(StandIn.TOKEN);
            browser().until("asked", () -> !service.asked().isEmpty());
            assertThat(service.asked()).containsExactly("{\"order\":\"floor\",\"airC\":5}");
        }
    }

    @Test
    void theHeatLossSheetIsWorkedOutFromTheForm() throws IOException {
        try (StandIn service = play("frost-night")) {
            browser().as(390, 844, "light").open(service.address() + "/#tunnel");
            Shots.settled(browser());
            assertThat(browser().text("#size")).contains("Give its width and length");
            browser().one("#size-width_m").sendKeys("4");
            browser().one("#size-length_m").sendKeys("6");
            browser().one("#size-outside_C").sendKeys("-12");
            browser().press("Work it out");
            browser().until("the sheet", () -> browser().text("#size").contains("What insulation would change"));
            assertThat(browser().text("#size"))
                    .contains("In all 389 W for each kelvin", "electrician", "In all", "of the 312.4 kWh (£74.20)");
            assertThat(service.sizes()).containsExactly("width_m=4&length_m=6&cover=single-film&outside_C=-12");
            assertThat(browser().shutOut()).isEmpty();
            Shots.shoot(browser(), SHOTS, "sheet-390-light.png");
            browser().open(service.address() + "/#tunnel");
            browser().until("it is kept", () -> browser().text("#size").contains("In all 389 W"));
            browser().run("localStorage.removeItem('rimeward.size')");
        }
    }

    @Test
    void namesFromStrangersStayText() throws IOException {
        try (StandIn service = play("hostile-names")) {
            for (String sheet : List.of("now", "hands")) {
                browser().as(390, 844, "light").open(service.address() + "/#" + sheet);
                Shots.settled(browser());
                assertThat(browser().all("body img, main script")).isEmpty();
                assertThat(browser().run("return document.title")).isNotEqualTo("owned");
                assertThat(browser().text("main")).contains("<script>");
            }
        }
    }

    @Test
    void aSeasonOpensAndLeadsToItsNights() throws IOException {
        try (StandIn service = play("frost-night")) {
            browser().as(1280, 844, "light").open(service.address());
            Shots.settled(browser());
            Object tookMs = Objects.requireNonNull(browser().run("""
                    const begun = performance.now();
                    location.hash = "#record";
                    return new Promise(done => {
                      const look = () => document.querySelector("main table") && document.querySelector("main canvas") ? done(performance.now() - begun) : requestAnimationFrame(look);
                      look();
                    })"""));
            System.out.println("A season of 200 nights opens in " + tookMs + " ms.");
            assertThat(browser().all("main tbody tr")).hasSize(21);
            browser().all("main tbody a").get(0).click();
            browser().until("the night", () -> browser().text("h1").equals("The night of Mon 26 Jan"));
        }
    }

    @Test
    void theFirstViewIsSmallAndComesInOneRound() throws IOException {
        try (StandIn service = play("frost-night")) {
            browser().as(390, 844, "light").open(service.address());
            Shots.settled(browser());
            Object bytes = browser()
                    .run(
                            "return performance.getEntriesByType('resource').concat(performance.getEntriesByType('navigation')).filter(e => !e.name.includes('/api/live')).reduce((all, e) => all + e.transferSize, 0)");
            System.out.println("The first view is " + bytes + " bytes.");
            assertThat(((Number) Objects.requireNonNull(bytes)).longValue())
                    .isBetween(20_000L, (long) FIRST_VIEW_BYTES);
            Object late = browser().run("""
                    const named = [...document.querySelectorAll("head link, head script")].map(n => n.href || n.src);
                    return performance.getEntriesByType("resource").map(e => e.name).filter(n => !n.includes("/api/") && !named.includes(n))""");
            assertThat((List<?>) Objects.requireNonNull(late)).isEmpty();
        }
    }

    @Test
    void theStripIsReadByKeys() throws IOException {
        try (StandIn service = play("frost-night")) {
            browser().as(390, 844, "light").open(service.address());
            Shots.settled(browser());
            browser().until("the strip", () -> !browser().all(".hair").isEmpty());
            String before = Objects.requireNonNull(browser().one(".hair").getDomAttribute("aria-valuetext"));
            browser().one(".hair").sendKeys(Keys.ARROW_LEFT, Keys.ARROW_LEFT);
            assertThat(browser().one(".hair").getDomAttribute("aria-valuetext"))
                    .isNotEqualTo(before)
                    .contains("coldest bench", "outside", "humidity");
        }
    }

    @Test
    void sheetsAreTurnedByKeysAndReadOutByTheirHeading() throws IOException {
        try (StandIn service = play("frost-night")) {
            browser().as(1280, 844, "light").open(service.address());
            Shots.settled(browser());
            for (String sheet : List.of("tonight", "record", "tunnel", "hands", "now")) {
                browser().one("nav a[href='#" + sheet + "']").sendKeys(Keys.ENTER);
                browser()
                        .until(
                                sheet,
                                () -> sheet.equals(String.valueOf(
                                        browser().run("return document.querySelector('main').dataset.sheet"))));
                assertThat(browser().run("return document.activeElement.tagName"))
                        .isEqualTo("H1");
                assertThat(browser().all("nav a[aria-current='page']"))
                        .singleElement()
                        .satisfies(a -> assertThat(a.getDomAttribute("href")).isEqualTo("#" + sheet));
            }
            assertThat(browser().one("main").findElements(By.tagName("h1"))).hasSize(1);
        }
    }

    @Test
    void whatIsNotThereYetSaysWhatItWaitsFor() throws IOException {
        try (StandIn service = play("nothing-yet")) {
            for (String[] each : new String[][] {
                {"now", "The plan waits for noon"},
                {"tonight", "waits for the first readings"},
                {"record", "The first night is written here"},
                {"tunnel", "Learning waits for five whole days"}
            }) {
                browser().as(390, 844, "light").open(service.address() + "/#" + each[0]);
                Shots.settled(browser());
                browser().until(each[1], () -> browser().text("main").contains(each[1]));
            }
        }
    }
}
