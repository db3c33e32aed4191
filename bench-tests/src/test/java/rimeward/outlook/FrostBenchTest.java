package rimeward.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * The frost alert over a handful of the winters of {@link FrostBench}, whose numbers over three hundred stand in DEVELOPERS.md. The limits
 * are those that the alert must reach; a dozen winters scatter about what three hundred give.
 */
@Tag("slow")
final class FrostBenchTest {
    private static final int WINTERS = 12;
    private static final int NIGHTS = 80;
    private static final int FIRST_SEED = 1;

    private final FrostScores corrected =
            FrostBench.scores(FIRST_SEED, WINTERS, NIGHTS, 1, Knowledge.FORECAST_CORRECTED);

    /** Else the rest would say nothing of real forecasts. */
    @Test
    void forecastsAreAsWrongAsPublished() {
        assertThat(FrostBench.within2K(FIRST_SEED, 30, NIGHTS, 1)).isCloseTo(86.5, within(3.0));
    }

    @Test
    void theProbabilityAtSunsetBeatsTheWintersOwnFrequency() {
        assertThat(corrected.frosts()).isGreaterThan(50);
        assertThat(corrected.skill(LoggedNight::sunset)).isGreaterThan(0.4);
    }

    @Test
    void whatIsSaidComesAboutAsOftenAsItIsSaid() {
        double[] off = corrected.lowestOff(LoggedNight::sunset);
        assertThat(off[0]).isCloseTo(0, within(0.25));
        assertThat(off[1]).isBetween(0.8, 1.25);
        for (double[] bin : corrected.reliability(LoggedNight::sunset)) {
            if (bin[0] >= 40) {
                assertThat(bin[2]).as("said %.2f", bin[1]).isCloseTo(bin[1], within(0.2));
            }
        }
    }

    @Test
    void theAlertComesHoursBeforeTheCold() {
        FrostScores.Alerts alerts = corrected.alerts(FrostBench::ours);
        assertThat(alerts.leadH(0.5)).isGreaterThan(6);
        assertThat(alerts.misses()).isLessThan((alerts.hits() + alerts.misses()) / 8);
    }

    @Test
    void learningHereImprovesOnTheForecastAsItStands() {
        FrostScores raw = FrostBench.scores(FIRST_SEED, WINTERS, NIGHTS, 1, Knowledge.FORECAST_RAW);
        assertThat(corrected.brier(LoggedNight::sunset)).isLessThan(raw.brier(LoggedNight::sunset));
    }
}
