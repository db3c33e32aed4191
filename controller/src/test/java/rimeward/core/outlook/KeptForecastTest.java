package rimeward.core.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class KeptForecastTest {
    private static final Forecast FORECAST = new Forecast(
            "the hill\nstation",
            1_768_046_400,
            List.of(
                    new Forecast.Point(
                            1_768_050_000,
                            -3.25,
                            OptionalDouble.of(-4.5),
                            OptionalDouble.of(2.125),
                            OptionalDouble.of(0.5)),
                    new Forecast.Point(
                            1_768_053_600, 0, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty())));

    @Test
    void comesBackButForABreakInTheSourcesName() {
        Forecast read = KeptForecast.read(KeptForecast.write(FORECAST));
        assertThat(read.source()).isEqualTo("the hill station");
        assertThat(read.issuedEpochS()).isEqualTo(FORECAST.issuedEpochS());
        assertThat(read.points()).isEqualTo(FORECAST.points());
    }

    @Test
    void anotherTextIsRefused() {
        for (String text :
                List.of("", "forecast1\na\n1\n", "forecast1\na\n1\n5 1.0 - -\n", "forecast2\na\n1\n5 1 - - -\n")) {
            assertThatThrownBy(() -> KeptForecast.read(text)).isInstanceOf(IllegalArgumentException.class);
        }
    }
}
