package rimeward.sim.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ForecastModelTest {
    private static final long EVENING = 1_732_989_600L; // 2024-11-30 18:00 UTC
    private static final int DAY_S = 86_400;
    private final WeatherSeries truth = Recipe.uplandWinter(new Place(54.4, -2.5, 300), EVENING - 3600, 300, 5)
            .make();

    private double errorK(ForecastModel model, int evening) {
        long issued = EVENING + evening * (long) DAY_S;
        long morning = issued + DAY_S / 2;
        return model.issue(truth, issued, morning).lowestC() - truth.lowestOutsideAirC(issued, morning);
    }

    @Test
    void aPerfectForecastIsTheTruth() {
        assertThat(errorK(ForecastModel.perfect(), 3)).isZero();
    }

    @Test
    void errorsHaveTheStatedBiasAndSpread() {
        var model = new ForecastModel(0.8, 1.5, 11);
        double sum = 0;
        double squares = 0;
        int nights = 290;
        for (int i = 0; i < nights; i++) {
            sum += errorK(model, i);
            squares += errorK(model, i) * errorK(model, i);
        }
        double mean = sum / nights;
        // Four standard errors: 1.5/√290, and 1.5/√580.
        assertThat(mean).isCloseTo(0.8, within(0.36));
        assertThat(Math.sqrt(squares / nights - mean * mean)).isCloseTo(1.5, within(0.25));
    }

    @Test
    void theSameEveningIsToldTheSameWhateverWasAskedBefore() {
        var model = new ForecastModel(0, 2, 11);
        double alone = errorK(model, 40);
        errorK(model, 3);
        assertThat(errorK(model, 40)).isEqualTo(alone);
        assertThat(errorK(new ForecastModel(0, 2, 12), 40)).isNotEqualTo(alone);
        assertThat(errorK(model, 41)).isNotEqualTo(alone);
    }
}
