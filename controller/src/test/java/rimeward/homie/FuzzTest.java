package rimeward.homie;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import rimeward.core.order.Order;
import rimeward.core.outlook.Outlook;
import rimeward.site.Site;

/** Ten thousand payloads from a seed, some noise, some good ones with a flaw: no crash, and no order outside its bounds. */
final class FuzzTest {
    private static final long SEED = 20_251_124;

    private static final List<String> GOOD = List.of(
            "5",
            "4.0",
            "19.99",
            "now",
            "45",
            "240",
            "0",
            "tank-full-dryer-12",
            "-1e3",
            "1e400",
            "NaN",
            "{\"issued\":\"2025-11-24T15:00:00Z\",\"spreadK\":1.5,\"points\":[{\"at\":\"2025-11-25T06:00:00Z\",\"outsideC\":-6.25}]}",
            "{\"issued\":\"2025-11-24T15:59:59.5Z\",\"spreadK\":20,\"points\":[{\"outsideC\":-60,\"at\":\"2025-11-24T18:00:00Z\"}]}");

    private static final List<String> PROPERTIES = List.of(
            "orders/acknowledge",
            "duty/floor",
            "night/plan",
            "night/forecast",
            "machine-dryer/stand-down",
            "machine-heater-1/stand-down",
            "air/coldest",
            "x/y",
            "$state",
            "/",
            "");

    @Test
    void noneOfTenThousandGoesPastABound() {
        Site site = OddSites.example();
        Exchange exchange = new Exchange(site, Exchange.open("homie"));
        Random random = new Random(SEED);
        exchange.connect();
        exchange.tick(OddSites.frame(site, new Random(1), 0, true));
        int refused = 0;
        for (int i = 0; i < 10_000; i++) {
            String topic = exchange.base() + "/" + PROPERTIES.get(random.nextInt(PROPERTIES.size())) + "/set";
            exchange.passMs(10_000);
            Heard heard = exchange.hear(topic, payload(random), random.nextInt(50) == 0, random.nextInt(50) == 0);
            refused += heard instanceof Heard.Refused ? 1 : 0;
        }
        assertThat(exchange.orders).as("seed " + SEED).hasSizeGreaterThan(300).allMatch(order -> isWithin(site, order));
        assertThat(exchange.orders)
                .map(Order::getClass)
                .map(Class::getSimpleName)
                .contains("Acknowledge", "SetFloor", "PlanNow", "HandForecast", "StandDown");
        assertThat(refused + exchange.orders.size()).isEqualTo(10_000);
        exchange.tick(OddSites.frame(site, new Random(1), 1, true));
        assertThat(exchange.value(exchange.base() + "/orders/refused")).contains(Integer.toString(refused));
        assertThat(exchange.value(exchange.base() + "/$state")).contains("ready");
    }

    private static boolean isWithin(Site site, Order order) {
        if (order instanceof Order.SetFloor floor) {
            return floor.floorC() >= site.lowestFloorC() && floor.floorC() <= site.highestFloorC();
        }
        if (order instanceof Order.StandDown down) {
            return site.machineIds().contains(down.machineId()) && down.forS() >= 0 && down.forS() <= 14_400;
        }
        if (order instanceof Order.HandForecast hand) {
            return hand.outlook() instanceof Outlook.Night night && night.lowestOutsideC() >= -60;
        }
        return !(order instanceof Order.Acknowledge acknowledge)
                || acknowledge.alertId().matches("[a-z0-9-]{1,200}");
    }

    private static byte[] payload(Random random) {
        byte[] bytes;
        if (random.nextInt(4) == 0) {
            bytes = new byte[random.nextInt(300)];
            random.nextBytes(bytes);
            return bytes;
        }
        bytes = GOOD.get(random.nextInt(GOOD.size())).getBytes(UTF_8);
        if (random.nextInt(3) > 0 && bytes.length > 0) {
            bytes[random.nextInt(bytes.length)] =
                    (byte) (random.nextBoolean() ? random.nextInt(256) : '0' + random.nextInt(10));
        }
        return random.nextInt(40) == 0 ? new String(bytes, UTF_8).repeat(2000).getBytes(UTF_8) : bytes;
    }
}
