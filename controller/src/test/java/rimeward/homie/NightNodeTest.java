package rimeward.homie;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import rimeward.site.Site;

final class NightNodeTest {
    private final Site site = OddSites.example();
    private final Exchange exchange = new Exchange(site, Exchange.open("homie"));

    private void tick(long number, boolean clockTrusted) {
        exchange.tick(OddSites.frame(site, new Random(1), number, clockTrusted));
    }

    private String said(String property) {
        Message message = exchange.kept.get(exchange.base() + "/night/" + property);
        return message == null ? "" : message.text();
    }

    @Test
    void aPlanIsToldUntilItsNightIsOver() {
        exchange.connect();
        tick(0, true);
        assertThat(said("says")).startsWith("no plan yet");
        assertThat(said("energy")).isEmpty();
        exchange.send(exchange.device.planned(OddPlans.of(site, 1)));
        assertThat(said("says")).startsWith("A guess: The floor of 4.0 °C ");
        assertThat(said("chance-of-cold")).matches("\\d+");
        assertThat(said("holds")).startsWith("The warm duty: from 16:00 ");
        assertThat(Double.parseDouble(said("energy"))).isBetween(0.5, 3.6);
        assertThat(Double.parseDouble(said("cost"))).isBetween(0.1, 1.1);
        assertThat(said("water")).isNotEmpty();
        tick(719, true);
        assertThat(said("energy")).isNotEmpty();
        tick(720, true);
        assertThat(said("says")).startsWith("no plan yet");
        assertThat(said("energy")).isEmpty();
    }

    @Test
    void withoutAClockNobodyKnowsWhichNightIsMeant() {
        exchange.connect();
        exchange.send(exchange.device.planned(OddPlans.of(site, 1)));
        tick(0, false);
        assertThat(said("energy")).isEmpty();
    }
}
