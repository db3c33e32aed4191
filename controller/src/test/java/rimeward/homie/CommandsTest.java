package rimeward.homie;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import rimeward.core.order.Answer;
import rimeward.core.order.Order;
import rimeward.core.outlook.Outlook;
import rimeward.site.Degrees;
import rimeward.site.Messaging.Command;

/** What the grower may ask for by message, and what is refused. The example: floor 4 °C, hot limit 25 °C; it is 2025-11-24T16:00Z. */
final class CommandsTest {
    private static final String FORECAST = """
            {"issued":"2025-11-24T15:00:00Z","spreadK":1.5,"points":[
             {"at":"2025-11-24T18:00:00Z","outsideC":-2.5},{"at":"2025-11-25T06:00:00Z","outsideC":-6.25}]}""";

    private Exchange exchange = new Exchange(OddSites.example(), Exchange.open("homie"));
    private long ticks;

    @BeforeEach
    void ready() {
        exchange.connect();
        tick();
    }

    private void tick() {
        exchange.tick(OddSites.frame(exchange.site, new Random(1), ticks++, true));
    }

    private Heard ask(String property, String payload) {
        return ask(property, payload.getBytes(UTF_8));
    }

    private Heard ask(String property, byte[] payload) {
        return exchange.hear(exchange.base() + "/" + property + "/set", payload, false, false);
    }

    private void takes(String property, String payload, Order order) {
        assertThat(ask(property, payload))
                .isInstanceOfSatisfying(
                        Heard.Asked.class, asked -> assertThat(asked.order()).isEqualTo(order));
    }

    private void refuses(String property, String payload, String because) {
        assertThat(ask(property, payload))
                .isInstanceOfSatisfying(
                        Heard.Refused.class,
                        refused -> assertThat(refused.why()).contains(because));
    }

    @Test
    void ordersAreTaken() {
        takes("orders/acknowledge", "tank-full-dryer-12", new Order.Acknowledge("tank-full-dryer-12"));
        takes("duty/floor", "5.5", new Order.SetFloor(5.5));
        takes("night/plan", "now", new Order.PlanNow());
        takes("machine-dryer/stand-down", "45", new Order.StandDown("dryer", 2700));
        takes("machine-dryer/stand-down", "0", new Order.StandDown("dryer", 0));
    }

    @Test
    void whoReadsFahrenheitIsToldAndAsksInIt() {
        exchange = new Exchange(OddSites.example().withDegrees(Degrees.FAHRENHEIT), Exchange.open("homie"));
        ready();
        assertThat(exchange.value(exchange.base() + "/duty/floor")).contains("39.2");
        assertThat(exchange.value(exchange.base() + "/duty/why").orElseThrow())
                .contains("°F")
                .doesNotContain("°C");
        assertThat(exchange.value(exchange.base() + "/$description").orElseThrow())
                .contains("°F")
                .doesNotContain("°C");
        assertThat(((Order.SetFloor) ((Heard.Asked) ask("duty/floor", "42.8")).order()).floorC())
                .isCloseTo(6, within(1e-9));
        refuses("duty/floor", "5.5", "leave 39.2 °F to ");
    }

    @Test
    void aForecastIsTakenOnce() {
        Outlook.Night night = new Outlook.Night(1_763_996_400, -6.25, 1.5, 50_400);
        takes("night/forecast", FORECAST, new Order.HandForecast(night));
        tick();
        assertThat(exchange.value(exchange.base() + "/night/forecast")).contains(FORECAST);
        refuses("night/forecast", FORECAST, "taken before");
        takes(
                "night/forecast",
                FORECAST.replace("15:00:00Z\",\"s", "15:30:00Z\",\"s"),
                new Order.HandForecast(new Outlook.Night(1_763_998_200, -6.25, 1.5, 50_395)));
    }

    @Test
    void aForecastIsHeldAgainstTheClock() {
        refuses("night/forecast", FORECAST.replace("2025-11-24T15", "2025-11-24T09"), "6 h ago");
        refuses("night/forecast", FORECAST.replace("2025-11-24T15", "2025-11-24T17"), "later than now");
        refuses(
                "night/forecast",
                FORECAST.replace("2025-11-24T18", "2025-11-24T11").replace("2025-11-25", "2025-11-24"),
                "past");
        refuses("night/forecast", FORECAST.replace("2025-11-25", "2025-11-28"), "must lie between");
        exchange.tick(OddSites.frame(exchange.site, new Random(1), ticks++, false));
        refuses("night/forecast", FORECAST, "clock is not set");
    }

    @Test
    void aForecastThatIsNoneIsRefused() {
        refuses("night/forecast", "", "ends too early");
        refuses("night/forecast", "[]", "is missing");
        refuses("night/forecast", FORECAST + "x", "an end was expected");
        refuses("night/forecast", FORECAST.replace("spreadK\":1.5", "spreadK\":NaN"), "no number");
        refuses("night/forecast", FORECAST.replace("spreadK\":1.5", "spreadK\":1e999"), "no number");
        refuses("night/forecast", FORECAST.replace("spreadK\":1.5", "spreadK\":\"1.5\""), "must be a number");
        refuses("night/forecast", FORECAST.replace("-6.25", "-600"), "must lie between");
        refuses("night/forecast", FORECAST.replace("spreadK", "spread"), "means nothing here");
        refuses("night/forecast", "[".repeat(4000), "nested");
        refuses("night/forecast", FORECAST + " ".repeat(9000), "8192 are allowed");
        String point = "{\"at\":\"2025-11-24T18:00:00Z\",\"outsideC\":1},";
        refuses("night/forecast", FORECAST.replace("\"points\":[", "\"points\":[" + point.repeat(150)), "1 to 100");
        refuses("night/forecast", FORECAST.replaceAll("(?s)\\[.*]", "[]"), "1 to 100");
    }

    @Test
    void theFloorStaysWithinThePlantsLimits() {
        refuses("duty/floor", "3.9", "4.0 °C to 20.0 °C");
        refuses("duty/floor", "20.1", "4.0 °C to 20.0 °C");
        for (String none :
                List.of("", "NaN", "Infinity", "-Infinity", "0x1p3", "1d", " 5", "5 ", "5,0", "+5", "1e999", "\0")) {
            refuses("duty/floor", none, "no number");
        }
    }

    @Test
    void otherBoundsHoldToo() {
        refuses("machine-dryer/stand-down", "241", "0 to 240");
        refuses("machine-dryer/stand-down", "-1", "0 to 240");
        refuses("machine-dryer/stand-down", "1.5", "no whole number");
        refuses("machine-dryer/stand-down", "9999999999999999999999", "no whole number");
        refuses("machine-none/stand-down", "5", "cannot be set");
        refuses("night/plan", "true", "is not \"now\"");
        refuses("orders/acknowledge", "", "no alert's id");
        refuses("orders/acknowledge", "a".repeat(257), "256 are allowed");
        refuses("orders/acknowledge", "A b", "no alert's id");
        refuses("air/coldest", "9", "cannot be set");
        refuses("no/such", "9", "cannot be set");
    }

    @Test
    void whatIsNotAllowedByNameIsRefused() {
        for (Command only : Command.values()) {
            exchange = new Exchange(OddSites.example(), Exchange.mqtt("homie", List.of(only)));
            ready();
            ask("orders/acknowledge", "tank-full-dryer-12");
            ask("duty/floor", "5");
            ask("night/plan", "now");
            ask("night/forecast", FORECAST);
            ask("machine-dryer/stand-down", "45");
            assertThat(exchange.orders).as(only.name()).hasSize(1);
        }
    }

    @Test
    void retainedAndDuplicateOrdersAreRefused() {
        String topic = exchange.base() + "/duty/floor/set";
        assertThat(exchange.hear(topic, "5".getBytes(UTF_8), true, false)).isInstanceOf(Heard.Refused.class);
        assertThat(exchange.hear(topic, "5".getBytes(UTF_8), false, true)).isInstanceOf(Heard.Refused.class);
        assertThat(exchange.orders).isEmpty();
    }

    @Test
    void badUtf8AndByteOrderMarksAreRefused() {
        assertThat(ask("night/plan", new byte[] {'n', 'o', 'w', (byte) 0xff})).isInstanceOf(Heard.Refused.class);
        assertThat(ask("night/plan", new byte[] {(byte) 0xc0, (byte) 0x80})).isInstanceOf(Heard.Refused.class);
        refuses("night/plan", "\ufeffnow", "byte order mark");
    }

    @Test
    void aFloodOfGoodOrdersIsHeldBack() {
        for (int i = 0; i < 500; i++) {
            ask("duty/floor", "5");
            exchange.passMs(100);
        }
        assertThat(exchange.orders).hasSizeBetween(8, 8 + 5); // eight at once, and one in ten seconds of the fifty
        assertThat(exchange.lines).filteredOn(line -> line.contains("refused")).hasSize(1);
    }

    @Test
    void refusalsAreCountedShownAndSeldomWrittenDown() {
        for (int i = 0; i < 1000; i++) {
            ask("duty/floor", "cold" + i);
            exchange.passMs(180);
        }
        tick();
        assertThat(exchange.lines).hasSize(3).last().asString().contains("and 333 more");
        assertThat(exchange.value(exchange.base() + "/orders/refused")).contains("1000");
        assertThat(exchange.value(exchange.base() + "/orders/answer").orElseThrow())
                .contains("is no number");
        exchange.passMs(60_000);
        assertThat(exchange.device.linesDue(1000 * 180 + 60_000)).hasSize(1);
    }

    @Test
    void whatAStrangerWroteCannotPlayWithTheLog() {
        ask("duty/floor", "\u001b[2J\nALERT \u202e");
        ask("du\nty/floor", "5");
        assertThat(exchange.lines).isNotEmpty().allMatch(line -> line.matches("[ -~…]+"));
    }

    @Test
    void theOutcomeIsShown() {
        exchange.send(exchange.device.answered(
                new Answer(new Order.Acknowledge("tank-full-dryer-12"), true, "The alert is acknowledged.")));
        assertThat(exchange.value(exchange.base() + "/orders/answer")).contains("The alert is acknowledged.");
        assertThat(exchange.value(exchange.base() + "/orders/acknowledge")).contains("tank-full-dryer-12");
        assertThat(exchange.value(exchange.base() + "/duty/floor")).contains("4.0");
        assertThat(exchange.value(exchange.base() + "/machine-dryer/stand-down"))
                .contains("0");
    }
}
