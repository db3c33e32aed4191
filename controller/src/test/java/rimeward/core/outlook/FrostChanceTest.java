package rimeward.core.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import rimeward.core.tunnel.Figure;

class FrostChanceTest {
    private static final long NIGHT_S = 12 * 3600;

    /** Falls by 1 K an hour from 4 °C, to −8 °C. */
    private static Course falling(double spreadK) {
        List<Course.Step> steps = new ArrayList<>();
        for (int hour = 0; hour <= 12; hour++) {
            steps.add(new Course.Step(hour * 3600L, 4 - hour, spreadK, -9));
        }
        return new Course(new Course.Basis.Guess(), steps);
    }

    private static FrostChance chance(double spreadK, double capabilityC, double errorK) {
        return FrostChance.of(falling(spreadK), 0, NIGHT_S, new Figure(capabilityC, errorK));
    }

    @Test
    void itGrowsFromNothingToCertaintyAsTheNightPassesTheCapability() {
        double last = 1;
        for (double capabilityC = 0; capabilityC >= -16; capabilityC -= 1) {
            double now = chance(1, capabilityC, 0.5).probability();
            assertThat(now).isLessThanOrEqualTo(last);
            last = now;
        }
        assertThat(chance(1, -2, 0.5).probability()).isGreaterThan(0.99);
        assertThat(last).isLessThan(0.001);
    }

    @Test
    void whatIsKnownLessWellOfTheTunnelMakesItLessCertain() {
        assertThat(chance(1, -11, 2).probability())
                .isGreaterThan(5 * chance(1, -11, 0).probability());
        assertThat(chance(1, -5, 2).probability()).isLessThan(chance(1, -5, 0).probability());
    }

    @Test
    void theHourIsTheOneInWhichItIsCrossed() {
        FrostChance sure = chance(0.2, -3.5, 0);
        assertThat(sure.epochS()).isBetween(7 * 3600L, 8 * 3600L);
        assertThat(sure.probability()).isCloseTo(1, within(1e-6));
    }

    @Test
    void theAlertDoesNotFlutter() {
        FrostAlert alert = FrostAlert.NONE;
        double between = (FrostAlert.RAISED_AT + FrostAlert.CLEARED_BELOW) / 2;
        alert = alert.after(new FrostChance(between, 0));
        assertThat(alert.stands()).isFalse();
        alert = alert.after(new FrostChance(FrostAlert.RAISED_AT, 0));
        assertThat(alert.stands()).isTrue();
        alert = alert.after(new FrostChance(between, 0));
        assertThat(alert.stands()).isTrue();
        alert = alert.after(new FrostChance(FrostAlert.CLEARED_BELOW / 2, 0));
        assertThat(alert.stands()).isFalse();
    }
}
