package rimeward.core.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import rimeward.core.tunnel.Figure;
import rimeward.fixture.Sites;
import rimeward.site.Site;

class PastNightTest {
    private static final Site SITE = Sites.metered();

    private static Alternative way(Alternative.Way way, double lowestC, double savedKWh) {
        return new Alternative(
                way,
                new Figure(5 + savedKWh, 0.5),
                new Figure(1.5, 0.125),
                new Figure(lowestC, 0.25),
                new Figure(savedKWh, 0.5),
                new Figure(0.5, 0.125));
    }

    private static PastNight night(int tunnelNights) {
        return new PastNight(
                LocalDate.of(2026, 1, 10),
                5,
                1.25,
                new Alternatives(
                        true,
                        tunnelNights,
                        List.of(
                                way(Alternative.Way.THERMOSTAT, SITE.floorC() + 1, 3.125),
                                way(Alternative.Way.DRYER_ALONE, -3.25, -1))));
    }

    @Test
    void comesBack() {
        assertThat(PastNight.parse(night(12).toText())).isEqualTo(night(12));
    }

    @Test
    void saysWhatWasSavedAndWhoWouldHaveLetItFreeze() {
        assertThat(night(12).inWords(SITE))
                .contains("took 5.0 kWh, 1.25")
                .contains("3.1 kWh less than the heater alone, 1.0 kWh more than the dryer alone")
                .contains("The dryer alone would have let the coldest bench down to -3.3 °C")
                .doesNotContain("The heater alone would have let")
                .doesNotContain("assumed");
        assertThat(night(0).inWords(SITE)).contains("The tunnel is assumed, not learned yet.");
    }

    @Test
    void anotherTextIsRefused() {
        for (String text : List.of("", "past1 2026-01-10 5 1", "past1 then 5 1 3", "past2 2026-01-10 5 1 3")) {
            assertThatThrownBy(() -> PastNight.parse(text)).isInstanceOf(IllegalArgumentException.class);
        }
    }
}
