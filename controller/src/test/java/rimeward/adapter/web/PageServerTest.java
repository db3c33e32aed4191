package rimeward.adapter.web;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.MessageDigest;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rimeward.adapter.journal.RecordFile;
import rimeward.core.Stepped;
import rimeward.core.judgement.Inside;
import rimeward.core.order.Answer;
import rimeward.core.order.Order;
import rimeward.core.outlook.Alternatives;
import rimeward.core.outlook.Course;
import rimeward.core.outlook.NightPlan;
import rimeward.core.outlook.PastNight;
import rimeward.core.outlook.PlanChoices;
import rimeward.core.outlook.PlanStart;
import rimeward.core.outlook.PlanText;
import rimeward.core.tunnel.TunnelEstimate;
import rimeward.fixture.Frames;
import rimeward.fixture.Sites;
import rimeward.json.Json;
import rimeward.json.JsonReader;
import rimeward.json.NoJson;
import rimeward.page.Planned;
import rimeward.record.FrameRow;
import rimeward.site.Page;
import rimeward.site.Place;
import rimeward.site.Sensor;
import rimeward.site.Site;

/** The page shows what control decided and what stands in the record, to those who may see it, and takes orders of those who may give them. */
@Timeout(120) // an exchange that never ends fails; it is no measurement
class PageServerTest {
    private static final Site SITE = Sites.metered();

    @TempDir
    Path folder;

    private final Frames frames = Frames.steady(4.6, 70);
    private ServedPage page;

    @BeforeEach
    void begin() throws IOException {
        page = new ServedPage(SITE, Page.onLoopback(0), folder);
    }

    @AfterEach
    void end() {
        page.close();
    }

    private Json json(String path) throws IOException, NoJson {
        String answer = page.get(path);
        assertThat(Wire.status(answer)).as(path).isEqualTo(200);
        return JsonReader.read(ServedPage.body(answer));
    }

    private static Json at(Json json, String... names) {
        Json found = json;
        for (String name : names) {
            found = found.get(name).orElseThrow(() -> new AssertionError("no " + name));
        }
        return found;
    }

    private static double number(Json json, String... names) {
        return ((Json.Figure) at(json, names)).value();
    }

    private static String text(Json json, String... names) {
        return ((Json.Text) at(json, names)).text();
    }

    private static List<Json> list(Json json, String... names) {
        return ((Json.Elements) at(json, names)).each();
    }

    // ---- what is shown

    @Test
    void beforeTheFirstDecisionItSaysSo() throws IOException {
        assertThat(page.get("/api/now")).startsWith("HTTP/1.1 503").contains("has decided nothing yet");
    }

    @Test
    void nowIsTheNewestDecision() throws IOException, NoJson {
        page.decide(frames.after(5));
        Stepped stepped = page.decide(frames.inside(4.2).after(60));
        Json now = json("/api/now");
        Inside.Seen inside = (Inside.Seen) stepped.outcome().judgement().inside();
        assertThat(number(now, "plants", "coldestC")).isCloseTo(inside.coldestC(), within(0.005));
        assertThat(number(now, "plants", "marginK")).isCloseTo(inside.coldestC() - 4, within(0.005));
        assertThat(number(now, "epochS"))
                .isEqualTo((double) stepped.outcome().frame().tick().wall().epochS());
        assertThat(text(now, "holding", "duty")).isEqualTo("heater");
        assertThat(text(now, "holding", "sentence")).startsWith("stage-1 is on: the coldest bench");
        assertThat(text(now, "tonight", "waitingFor")).contains("No plan");
        assertThat(list(now, "holding", "machines")).hasSize(SITE.machines().size());
    }

    @Test
    void thePlanIsShownWithPlainerWaysBesideItAndTheNightBefore() throws IOException, NoJson {
        long nowS = page.decide(frames.after(5)).outcome().frame().tick().wall().epochS();
        Course course = new Course(
                new Course.Basis.Guess(),
                List.of(new Course.Step(nowS, 1, 1, 0), new Course.Step(nowS + 36_000, -4.5, 2, -5)));
        TunnelEstimate tunnel = TunnelEstimate.assumed(SITE);
        PlanStart start = PlanStart.of(nowS, 6);
        PlanChoices choices = PlanChoices.usual(SITE);
        NightPlan plan = NightPlan.of(SITE, tunnel, course, start, choices);
        Alternatives others = Alternatives.planned(SITE, tunnel, course, start, choices);
        PastNight before = new PastNight(LocalDate.of(2025, 11, 23), 5, 1.5, new Alternatives(true, 9, List.of()));
        page.server.reckoned(before);
        assertThat(text(json("/api/tonight"), "lastNight")).isEqualTo(before.inWords(SITE));
        page.server.planned(new Planned(plan, others));
        Json tonight = json("/api/tonight");
        assertThat(text(tonight, "lastNight")).isEqualTo(before.inWords(SITE));
        assertThat(list(tonight, "plan", "alternatives")).hasSize(others.all().size());
        assertThat(list(tonight, "text")).hasSameSizeAs(PlanText.sentences(plan, SITE));
    }

    private static Offset<Double> within(double offset) {
        return Offset.offset(offset);
    }

    @Test
    void whoIsColdIsSaidAndWhatStandsIsListedUntilItIsOver() throws IOException, NoJson {
        frames.inside(3);
        for (int i = 0; i < 20; i++) {
            page.decide(frames.jitter(0.01 * (i % 3)).after(5));
        }
        Json cold = json("/api/now");
        assertThat(text(cold, "plants", "state")).isEqualTo("under");
        Json alert = list(cold, "alerts").get(0);
        assertThat(text(alert, "kind")).isEqualTo("floor-crossed");
        assertThat(text(alert, "severity")).isEqualTo("extreme");
        assertThat(text(list(cold, "hands").get(0), "incident")).isEqualTo(text(alert, "incident"));
        for (int i = 0; i < 200; i++) { // no faster than air can warm
            page.decide(frames.inside(Math.min(8, 3 + 0.05 * i))
                    .jitter(0.01 * (i % 3))
                    .after(5));
        }
        assertThat(list(json("/api/now"), "alerts"))
                .extracting(each -> text(each, "kind"))
                .doesNotContain("floor-crossed");
    }

    @Test
    void theDaysColumnsAreTheRecords() throws Exception {
        for (int minute = 0; minute < 90; minute++) {
            page.decide(
                    frames.inside(5 + minute / 60.0).jitter(0.01 * (minute % 3)).after(60));
        }
        page.journal.flush();
        Json day = json("/api/day");
        long startS = (long) number(day, "startEpochS");
        long stepS = (long) number(day, "stepS");
        List<Json> coldest = list(day, "columns", "coldestC");
        assertThat(coldest).hasSize((int) (86_400 / stepS));
        List<FrameRow> rows = RecordFile.frames(folder.resolve(ServedPage.RECORD));
        int compared = 0;
        for (int i = 0; i < coldest.size(); i++) {
            OptionalDouble lowest = lowest(rows, startS + i * stepS, startS + (i + 1) * stepS);
            assertThat(coldest.get(i) instanceof Json.Figure).isEqualTo(lowest.isPresent());
            if (coldest.get(i) instanceof Json.Figure shown) {
                assertThat(shown.value()).isCloseTo(lowest.getAsDouble(), within(0.0051));
                compared++;
            }
        }
        assertThat(compared).isGreaterThanOrEqualTo(18);
    }

    private static OptionalDouble lowest(List<FrameRow> rows, long fromS, long toS) {
        return rows.stream()
                .filter(row -> row.frame().tick().wall().epochMs() >= fromS * 1000
                        && row.frame().tick().wall().epochMs() < toS * 1000)
                .flatMap(row -> IntStream.range(0, 3)
                        .filter(i -> row.believedAirC(i).isPresent())
                        .mapToObj(i -> row.believedAirC(i).getAsDouble()
                                - SITE.sensors().get(i).uncertaintyK()))
                .mapToDouble(Double::doubleValue)
                .min();
    }

    @Test
    void whatTheRecordDoesNotHaveYetIsShownAllTheSame() throws IOException, NoJson {
        page.decide(frames.after(5));
        assertThat(list(json("/api/day"), "columns", "coldestC")).anyMatch(each -> each instanceof Json.Figure);
    }

    @Test
    void aNightIsShownWithItsSwitchesAndDownloaded() throws Exception {
        for (int i = 0; i < 200; i++) {
            page.decide(frames.inside(4.3 + 0.01 * (i % 5)).after(60));
        }
        page.journal.flush();
        List<Json> nights = list(json("/api/nights"), "nights");
        String evening = text(nights.get(0), "night");
        Json night = json("/api/night/" + evening);
        assertThat(text(night, "night", "lowestBench")).isEqualTo("cold-corner");
        assertThat(list(night, "switches"))
                .isNotEmpty()
                .allSatisfy(each -> assertThat(text(each, "why")).isNotBlank());
        String table = page.get("/night/" + evening + ".csv");
        assertThat(table).contains("attachment; filename=\"" + SITE.id() + "-" + evening + ".csv\"");
        assertThat(ServedPage.body(table).lines()).hasSizeGreaterThan(100);
    }

    @Test
    void aNightsReportAllowsItsOwnScriptAndNoOther() throws Exception {
        for (int i = 0; i < 200; i++) {
            page.decide(frames.inside(4.3 + 0.01 * (i % 5)).after(60));
        }
        page.journal.flush();
        String evening = text(list(json("/api/nights"), "nights").get(0), "night");
        String answer = page.get("/night/" + evening + ".html");
        String html = ServedPage.body(answer);
        String script = html.substring(html.indexOf("<script>") + 8, html.indexOf("</script>"));
        byte[] sum = MessageDigest.getInstance("SHA-256").digest(script.getBytes(UTF_8));
        assertThat(answer)
                .contains("script-src 'sha256-" + Base64.getEncoder().encodeToString(sum) + "'")
                .contains("Content-Type: text/html");
        assertThat(html)
                .startsWith("<!doctype html>")
                .contains("The floor of", "cold-corner", "stage-1 on", "The log")
                .doesNotContain("http://", "https://");
    }

    @Test
    void whatASensorIsCalledIsText() throws Exception {
        page.close();
        String name = "<script>alert('bench')</script>";
        page = new ServedPage(calling(name), Page.onLoopback(0), Files.createDirectory(folder.resolve("odd")));
        for (int i = 0; i < 10; i++) {
            page.decide(frames.inside(4.3 + 0.01 * (i % 5)).after(60));
        }
        page.journal.flush();
        Json now = json("/api/now");
        assertThat(text(now, "plants", "coldestSensor")).isEqualTo(name);
        String evening = text(list(json("/api/nights"), "nights").get(0), "night");
        assertThat(page.get("/night/" + evening + ".html")).doesNotContain(name).contains("&lt;script&gt;alert");
    }

    /** The usual place with another name for every bench. */
    private static Site calling(String bench) {
        List<Sensor> sensors = SITE.sensors().stream()
                .map(each -> new Sensor(
                        each.id(),
                        each.place().isInside() ? new Place.Bench(bench) : each.place(),
                        each.hasHumidity(),
                        each.uncertaintyK(),
                        each.uncertaintyPercent(),
                        each.limits()))
                .toList();
        return new Site(
                SITE.id(),
                SITE.name(),
                SITE.plants(),
                SITE.targets(),
                SITE.tunnel(),
                sensors,
                SITE.heater(),
                SITE.drying(),
                SITE.venting(),
                SITE.circuit(),
                SITE.tariff());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/api/night/2026-13-45",
                "/api/night/2026-02-30",
                "/api/night/1999-01-01",
                "/api/night/0000-00-00",
                "/api/night/2026-01-01/..",
                "/api/night/",
                "/night/2026-01-01.csv",
                "/night/../../etc/passwd",
                "/../../../../etc/passwd",
                "/..%2f..%2fetc/passwd",
                "/%2e%2e/",
                "/page/index.html",
                "//etc/passwd",
                "/.git/config",
                "/StaticFiles.class",
                "/index.html/",
                "/index.html%00.js",
                "/api",
                "/api/",
                "/wp-login.php",
            })
    void whatIsNotThereIsNotFound(String path) throws IOException {
        assertThat(page.get(path)).startsWith("HTTP/1.1 404").contains("There is no such page.");
    }

    @Test
    void theMachinesDayAndTheSensorsAreShown() throws Exception {
        page.decide(frames.after(5));
        page.decide(frames.inside(4.2).after(60));
        page.decide(frames.inside(4.3).after(60));
        page.journal.flush();
        Json hands = json("/api/hands");
        Json first = list(hands, "machines").get(0);
        assertThat(text(first, "id")).isEqualTo("stage-1");
        assertThat(number(first, "starts24h")).isEqualTo(1);
        assertThat(number(first, "hours24h")).isCloseTo(60 / 3600.0, within(0.006));
        assertThat(text(list(hands, "sensors").get(0), "trust")).isEqualTo("believed");
        assertThat(number(hands, "circuit", "mostW")).isEqualTo(SITE.circuit().limitW());
    }

    @Test
    void aSheetIsWorkedOutOfWhatIsAskedOrRefusedInASentence() throws Exception {
        page.decide(frames.after(5));
        assertThat(number(json("/api/size?width_m=4&length_m=6&cover=twin-wall"), "areas", "floor_m2"))
                .isEqualTo(24);
        assertThat(page.get("/api/size?width_m=4&length_m=%3Cscript%3E"))
                .startsWith("HTTP/1.1 422")
                .contains("length (m) is \\\"<script>\\\", which is no number");
    }

    @Test
    void aSheetAskedForInNonsenseIsRefused() throws Exception {
        assertThat(page.get("/api/size?width_m=%zz")).startsWith("HTTP/1.1 4").contains("web address");
        assertThat(page.get("/api/size")).startsWith("HTTP/1.1 422").contains("width (m) is missing");
    }

    @Test
    void whereTheRecordCannotBeReadTheRestIsShown() throws Exception {
        page.decide(frames.after(5));
        page.journal.close();
        Files.delete(folder.resolve(ServedPage.RECORD));
        assertThat(page.get("/api/nights")).startsWith("HTTP/1.1 503").contains("cannot be read");
        assertThat(page.get("/api/now")).startsWith("HTTP/1.1 200");
    }

    @Test
    void theChartingLibraryIsServedPackedAndOnlyOnce() throws IOException {
        String asked =
                "GET /chart.js HTTP/1.1\r\nHost: localhost\r\nAccept-Encoding: gzip, br\r\nConnection: close\r\n";
        String answer = Wire.exchange(page.server.port(), asked + "\r\n");
        assertThat(answer).contains("Content-Encoding: gzip", "Content-Type: text/javascript", "Vary: Accept-Encoding");
        String tag = answer.replaceAll("(?s).*ETag: (\"[^\"]+\").*", "$1");
        String again = Wire.exchange(page.server.port(), asked + "If-None-Match: " + tag + "\r\n\r\n");
        assertThat(again).startsWith("HTTP/1.1 304").endsWith("\r\n\r\n");
    }

    @ParameterizedTest
    @CsvSource({
        "PUT, /",
        "DELETE, /api/now",
        "POST, /api/now",
        "OPTIONS, /",
        "TRACE, /",
        "GET, /api/ask",
        "PATCH, /api/ask"
    })
    void otherMethodsAreRefused(String method, String path) throws IOException {
        String answer = Wire.exchange(
                page.server.port(), method + " " + path + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n");
        assertThat(answer).startsWith("HTTP/1.1 405").contains("Allow: ");
    }

    // ---- who may see it

    @ParameterizedTest
    @ValueSource(strings = {"localhost", "localhost:80", "LOCALHOST", "127.0.0.1", "127.0.0.1:8484"})
    void itAnswersToItsNames(String host) throws IOException {
        assertThat(asHost(host)).isEqualTo(404);
    }

    @ParameterizedTest
    @CsvSource({
        "evil.example, 421",
        "localhost.evil.example, 421",
        "127.0.0.1.evil.example, 421",
        "0.0.0.0, 421",
        "192.168.1.1, 421",
        "[::1], 421",
        "'', 400",
        "local host, 400",
        "localhost:x, 400",
        "user@localhost, 400"
    })
    void anotherSitesNameIsRefused(String host, int status) throws IOException {
        assertThat(asHost(host)).isEqualTo(status);
    }

    private int asHost(String host) throws IOException {
        return Wire.status(Wire.exchange(
                page.server.port(), "GET /nowhere HTTP/1.1\r\nHost: " + host + "\r\nConnection: close\r\n\r\n"));
    }

    // ---- live

    @Test
    void whoFollowsSeesEachDecisionAndAnswer() throws IOException {
        Stepped first = page.decide(frames.after(5));
        try (Wire wire = new Wire(page.server.port())) {
            wire.say("GET /api/live HTTP/1.1\r\nHost: localhost\r\n\r\n");
            assertThat(wire.until("\"epochS\":" + epochS(first))).contains("event: now");
            Stepped next = page.decide(frames.after(5));
            assertThat(wire.until("\"epochS\":" + epochS(next))).contains("event: now");
        }
    }

    private static long epochS(Stepped stepped) {
        return stepped.outcome().frame().tick().wall().epochS();
    }

    // ---- orders

    private String token() throws IOException {
        return Files.readString(folder.resolve(Token.FILE), UTF_8).strip();
    }

    private String ask(String body, String... headers) throws IOException {
        StringBuilder lines = new StringBuilder("POST /api/ask HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n");
        for (String header : headers) {
            lines.append(header).append("\r\n");
        }
        return Wire.exchange(
                page.server.port(),
                lines.append("Content-Length: ")
                        .append(body.getBytes(UTF_8).length)
                        .append("\r\n\r\n")
                        .append(body)
                        .toString());
    }

    private String asked(String body) throws IOException {
        return ask(body, "Content-Type: application/json", "Authorization: Bearer " + token());
    }

    @Test
    void theTokenOfItsOwnMakingIsItsOwnersAlone() throws IOException {
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(folder.resolve(Token.FILE))))
                .isEqualTo("rw-------");
        assertThat(token()).hasSize(43); // 256 bits in base 64
        assertThat(page.said).contains("the token for orders on the page lies in " + folder.resolve(Token.FILE));
        assertThat(page.said).noneMatch(line -> line.contains("Bearer"));
    }

    @Test
    void ordersAreHandedOnAndAnswered() throws IOException, NoJson {
        page.decide(frames.after(5));
        assertThat(asked("{\"order\":\"acknowledge\",\"incident\":\"tank-full-x-1\"}"))
                .startsWith("HTTP/1.1 202");
        assertThat(asked("{\"order\":\"floor\",\"airC\":5.5}")).startsWith("HTTP/1.1 202");
        assertThat(asked("{\"order\":\"standDown\",\"minutes\":30,\"machine\":\"dryer\"}"))
                .startsWith("HTTP/1.1 202");
        assertThat(asked("{\"order\":\"planNow\"}")).startsWith("HTTP/1.1 202");
        assertThat(page.asked)
                .containsExactly(
                        new Order.Acknowledge("tank-full-x-1"),
                        new Order.SetFloor(5.5),
                        new Order.StandDown("dryer", 1800),
                        new Order.PlanNow());
        page.server.answered(new Answer(new Order.PlanNow(), false, "There is nothing to plan by."));
        assertThat(text(json("/api/now"), "answer", "text")).isEqualTo("There is nothing to plan by.");
    }

    @Test
    void whoWorksInsideStandsAllMachinesDownAndBringsThemBack() throws IOException {
        asked("{\"order\":\"standDown\",\"minutes\":10}");
        asked("{\"order\":\"return\"}");
        List<Order> expected = new ArrayList<>();
        SITE.machineIds().forEach(id -> expected.add(new Order.StandDown(id, 600)));
        SITE.machineIds().forEach(id -> expected.add(new Order.StandDown(id, 0)));
        assertThat(page.asked).containsExactlyElementsOf(expected);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "null",
                "[]",
                "{}",
                "{\"order\":\"melt\"}",
                "{\"order\":\"floor\"}",
                "{\"order\":\"floor\",\"airC\":\"5\"}",
                "{\"order\":\"floor\",\"airC\":-30}",
                "{\"order\":\"floor\",\"airC\":3.5}",
                "{\"order\":\"floor\",\"airC\":1e999}",
                "{\"order\":\"standDown\",\"minutes\":-1}",
                "{\"order\":\"standDown\",\"minutes\":100000}",
                "{\"order\":\"standDown\",\"minutes\":5,\"machine\":\"../etc\"}",
                "{\"order\":\"acknowledge\",\"incident\":\"<script>\"}",
                "{\"order\":\"planNow\",\"order\":\"floor\"}",
                "{\"order\":\"planNow\"} and more",
            })
    void whatIsNoOrderIsRefusedInASentence(String body) throws IOException {
        assertThat(asked(body)).startsWith("HTTP/1.1 422").contains("That is no order: ");
        assertThat(page.asked).isEmpty();
    }

    @Test
    void withoutTheTokenNothingIsTaken() throws IOException {
        String order = "{\"order\":\"planNow\"}";
        assertThat(ask(order, "Content-Type: application/json")).startsWith("HTTP/1.1 401");
        assertThat(ask(order, "Content-Type: application/json", "Authorization: Bearer " + token().substring(1)))
                .startsWith("HTTP/1.1 401");
        assertThat(ask(order, "Content-Type: application/json", "Authorization: Basic " + token()))
                .startsWith("HTTP/1.1 401");
        assertThat(ask(order, "Content-Type: application/json", "Cookie: token=" + token()))
                .startsWith("HTTP/1.1 401");
        assertThat(page.asked).isEmpty();
    }

    @Test
    void anotherSitesPageMayNotAskEvenWithTheToken() throws IOException {
        String order = "{\"order\":\"planNow\"}";
        String bearer = "Authorization: Bearer " + token();
        assertThat(ask(order, bearer, "Content-Type: application/json", "Origin: http://evil.example"))
                .startsWith("HTTP/1.1 403");
        assertThat(ask(order, bearer, "Content-Type: application/json", "Origin: null"))
                .startsWith("HTTP/1.1 403");
        assertThat(ask(order, bearer, "Content-Type: application/json", "Sec-Fetch-Site: cross-site"))
                .startsWith("HTTP/1.1 403");
        assertThat(ask(order, bearer, "Content-Type: text/plain")).startsWith("HTTP/1.1 415");
        assertThat(ask(order, bearer, "Content-Type: application/x-www-form-urlencoded"))
                .startsWith("HTTP/1.1 415");
        assertThat(ask(order, bearer)).startsWith("HTTP/1.1 415");
        assertThat(page.asked).isEmpty();
        assertThat(ask(order, bearer, "Content-Type: application/json", "Origin: http://localhost"))
                .startsWith("HTTP/1.1 202");
    }

    @Test
    void whoGuessesIsLetThroughEverMoreSlowly() throws IOException {
        String order = "{\"order\":\"planNow\"}";
        List<Integer> statuses = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            statuses.add(Wire.status(ask(order, "Content-Type: application/json", "Authorization: Bearer guess" + i)));
        }
        assertThat(statuses).startsWith(401).endsWith(429).containsOnly(401, 429);
        assertThat(Wire.status(asked(order))).isEqualTo(429);
        assertThat(page.asked).isEmpty();
    }

    @Test
    void tenThousandRequestsOfNonsenseLeaveItAsItWas() throws IOException {
        String[] nonsense = {
            "x\r\n\r\n",
            "GET / HTTP/9.9\r\n\r\n",
            "GET /%%% HTTP/1.1\r\nHost: localhost\r\n\r\n",
            "\r\n\r\n",
            "POST /api/ask HTTP/1.1\r\nHost: localhost\r\nContent-Length: 999999\r\n\r\n",
        };
        for (int i = 0; i < 10_000; i++) {
            try (Wire wire = new Wire(page.server.port())) {
                wire.say(nonsense[i % nonsense.length]);
            }
        }
        page.decide(frames.after(5));
        assertThat(page.get("/api/now")).startsWith("HTTP/1.1 200");
        assertThat(page.asked).isEmpty();
    }
}
