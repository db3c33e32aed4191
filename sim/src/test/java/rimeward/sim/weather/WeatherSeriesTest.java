package rimeward.sim.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class WeatherSeriesTest {
    private static final long START = 1_700_000_000L;

    private static WeatherSample airC(double airC) {
        return new WeatherSample(airC, 500 + 10 * airC, 2, 97_000, 0.5, 100, airC - 10);
    }

    private final WeatherSeries series =
            WeatherSeries.of("made: a test", START, 600, List.of(airC(0), airC(-6), airC(-3)));

    @Test
    void everyQuantityIsLinearBetweenSamples() {
        var cursor = series.cursor();
        cursor.moveTo(START + 150);
        assertThat(cursor.outsideAirC()).isEqualTo(-1.5);
        assertThat(cursor.vapourPa()).isEqualTo(485);
        assertThat(cursor.skyC()).isEqualTo(-11.5);
        assertThat(cursor.windMPerS()).isEqualTo(2);
        assertThat(cursor.pressurePa()).isEqualTo(97_000);
        assertThat(cursor.cloudFraction()).isEqualTo(0.5);
        assertThat(cursor.globalRadiationWPerM2()).isEqualTo(100);
    }

    @Test
    void movesForwardsBackwardsAndOntoBothEnds() {
        var cursor = series.cursor();
        cursor.moveTo(series.endEpochS());
        assertThat(cursor.outsideAirC()).isEqualTo(-3);
        cursor.moveTo(START);
        assertThat(cursor.outsideAirC()).isEqualTo(0);
        cursor.moveTo(START + 900);
        assertThat(cursor.outsideAirC()).isEqualTo(-4.5);
    }

    @Test
    void smallStepsAndOneLeapReadTheSame() {
        var walking = series.cursor();
        for (long t = START; t <= series.endEpochS(); t += 5) {
            walking.moveTo(t);
            var leaping = series.cursor();
            leaping.moveTo(t);
            assertThat(walking.outsideAirC()).isEqualTo(leaping.outsideAirC());
        }
    }

    @Test
    void humidityRatioFollowsVapourAndPressure() {
        var cursor = series.cursor();
        cursor.moveTo(START);
        // ASHRAE Fundamentals 2017 ch. 1 eq. 20
        assertThat(cursor.humidityKgPerKg()).isCloseTo(0.621945 * 500 / 96_500, within(1e-9));
    }

    @Test
    void makesUpNoWeatherBeyondItsEnds() {
        var cursor = series.cursor();
        assertThatThrownBy(() -> cursor.moveTo(START - 1)).hasMessageContaining("asked for " + (START - 1));
        assertThatThrownBy(() -> cursor.moveTo(series.endEpochS() + 1)).hasMessageContaining("weather runs from");
    }

    @Test
    void findsTheLowestBetweenTwoTimes() {
        assertThat(series.lowestOutsideAirC(START, series.endEpochS())).isEqualTo(-6);
        assertThat(series.lowestOutsideAirC(START, START + 300)).isEqualTo(-3);
        assertThat(series.lowestOutsideAirC(START + 900, series.endEpochS())).isEqualTo(-4.5);
    }

    @Test
    void refusesImpossibleWeather() {
        assertThatThrownBy(() -> airC(-99)).hasMessage("outsideAirC is -99.0, must be -60.0…60.0");
        assertThatThrownBy(() -> airC(Double.NaN)).hasMessageContaining("outsideAirC is NaN");
        assertThatThrownBy(() -> WeatherSeries.of("made", START, 600, List.of(airC(0))))
                .hasMessageContaining("two samples");
    }
}
