package rimeward.sim.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rimeward.air.RelativeHumidity;

class RecipeTest {
    private static final Place PLACE = new Place(54.4, -2.5, 300);
    private static final long START = 1_732_968_000L; // 2024-11-30 12:00 UTC
    private static final int DAY_S = 86_400;

    @Test
    void theSameSeedMakesTheSameWeatherAndAnotherAnother() {
        var once = Recipe.uplandWinter(PLACE, START, 5, 7).make();
        var twice = Recipe.uplandWinter(PLACE, START, 5, 7).make();
        var other = Recipe.uplandWinter(PLACE, START, 5, 8).make();
        assertThat(once.provenance()).isEqualTo("made: recipe, seed 7");
        for (int i = 0; i < once.samples(); i++) {
            assertThat(once.sample(i)).isEqualTo(twice.sample(i)).isNotEqualTo(other.sample(i));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void winterIsPlausible(long seed) {
        var winter = Recipe.uplandWinter(PLACE, START, 90, seed).make();
        double mean = 0;
        for (int i = 0; i < winter.samples(); i++) {
            var now = winter.sample(i);
            mean += now.outsideAirC() / winter.samples();
            assertThat(RelativeHumidity.overWaterPercent(now.outsideAirC(), now.vapourPa()))
                    .isBetween(10.0, 100.001);
        }
        assertThat(mean).isBetween(-2.0, 4.0);
        double lowestC = winter.lowestOutsideAirC(winter.startEpochS(), winter.endEpochS());
        assertThat(lowestC).isBetween(-16.0, -4.0);
        assertThat(frosts(winter)).isBetween(15, 80);
    }

    private static int frosts(WeatherSeries winter) {
        int frosts = 0;
        for (long t = winter.startEpochS(); t < winter.endEpochS(); t += DAY_S) {
            frosts += winter.lowestOutsideAirC(t, t + DAY_S) < 0 ? 1 : 0;
        }
        return frosts;
    }

    @Test
    void dampWeatherIsDamperAndHasNoFrost() {
        var damp = Recipe.mildAndDamp(PLACE, START, 14, 3).make();
        assertThat(damp.lowestOutsideAirC(damp.startEpochS(), damp.endEpochS())).isGreaterThan(0);
        double humidity = 0;
        for (int i = 0; i < damp.samples(); i++) {
            var now = damp.sample(i);
            humidity += RelativeHumidity.overWaterPercent(now.outsideAirC(), now.vapourPa()) / damp.samples();
        }
        assertThat(humidity).isGreaterThan(85);
    }

    @Test
    void daysAreWarmerThanNightsAndTheSunShinesOnlyThen() {
        var still = new Recipe(PLACE, START, 3, 1, 0, 0, 8, 2, 0, 1).make();
        var cursor = still.cursor();
        cursor.moveTo(START + DAY_S + 2 * 3600);
        double afternoonC = cursor.outsideAirC();
        assertThat(cursor.globalRadiationWPerM2()).isGreaterThan(20);
        cursor.moveTo(START + DAY_S + 18 * 3600);
        assertThat(afternoonC - cursor.outsideAirC()).isGreaterThan(4);
        assertThat(cursor.globalRadiationWPerM2()).isZero();
    }

    @Test
    void refusesARecipeThatCannotBe() {
        assertThatThrownBy(() -> Recipe.uplandWinter(PLACE, START, 0, 1))
                .hasMessageContaining("days is 0.0, must be 1.0");
    }
}
