package rimeward.sim.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import rimeward.sim.weather.PartonLogan.Day;

class PartonLoganTest {
    private static final Place PLACE = new Place(54.4, -2.5, 300);
    private static final int DAY_S = 86_400;
    private static final long NOON = 1_705_320_000L; // 2024-01-15 12:00 UTC

    private final Track airC = PartonLogan.expand(
            PLACE, List.of(new Day(NOON, -6, 4), new Day(NOON + DAY_S, -9, -1), new Day(NOON + 2 * DAY_S, 0, 7)));

    private double extreme(long from, long until, int sign) {
        double extremeC = -1e9;
        for (int i = 0; i < airC.size(); i++) {
            if (airC.epochS(i) >= from && airC.epochS(i) <= until) {
                extremeC = Math.max(extremeC, sign * airC.value(i));
            }
        }
        return sign * extremeC;
    }

    @Test
    void reachesEachDaysExtremes() {
        int afternoon = 3 * 3600;
        assertThat(extreme(NOON, NOON + afternoon, 1)).isCloseTo(4, within(0.02));
        assertThat(extreme(NOON + afternoon, NOON + DAY_S, -1)).isCloseTo(-9, within(0.1));
        assertThat(extreme(NOON + DAY_S, NOON + DAY_S + afternoon, 1)).isCloseTo(-1, within(0.02));
        // Of a night that grows warmer: at sunrise it is as warm as the next day's lowest.
        assertThat(airC.at(Daylight.around(PLACE, NOON + 2 * DAY_S).sunriseEpochS() - 612))
                .isCloseTo(0, within(0.1));
    }

    @Test
    void isWarmestTheStatedTimeAfterNoon() {
        long noon = Daylight.around(PLACE, NOON).noonEpochS();
        long warmest = noon;
        for (long t = noon - DAY_S / 4; t < noon + DAY_S / 4; t += 60) {
            warmest = airC.at(t) > airC.at(warmest) ? t : warmest;
        }
        // a + c = 1.86 − 0.17 h, Parton & Logan (1981), for air at 1.5 m; to the step of the track.
        assertThat((double) (warmest - noon)).isCloseTo(1.69 * 3600, within(600.0));
    }

    @Test
    void neverJumps() {
        for (int i = 1; i < airC.size(); i++) {
            assertThat(airC.epochS(i) - airC.epochS(i - 1)).isEqualTo(600);
            assertThat(Math.abs(airC.value(i) - airC.value(i - 1))).isLessThan(0.6);
        }
    }
}
