package rimeward.homie;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rimeward.core.reading.Reading;
import rimeward.core.reading.SensorReading;

class HandedReadingTest {
    @Test
    void whatOthersSend() {
        assertThat(read("{\"air_C\": 4.1, \"rh_percent\": 83}")).isEqualTo(reading(value(4.1), value(83)));
        assertThat(read("{\"battery\":{\"V\":2.9},\"rh_percent\":83}"))
                .isEqualTo(reading(Reading.NOT_FITTED, value(83)));
        assertThat(read("-3.5")).isEqualTo(reading(value(-3.5), Reading.NOT_FITTED));
    }

    @Test
    void aReadingOfUnknownAgeIsNone() {
        assertThat(HandedReading.read("4.1".getBytes(UTF_8), true)).isInstanceOf(HandedReading.Refused.class);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "cold",
                "NaN",
                "{}",
                "[4.1]",
                "\"4.1\"",
                "{\"air_C\": \"4.1\"}",
                "{\"air_C\": null}",
                "{\"air_C\": 4.1, \"air_C\": 9}",
                "{\"air_F\": 39}",
                "4.1 °C",
                "1e999"
            })
    void nonsenseIsRefused(String payload) {
        assertThat(read(payload)).isInstanceOf(HandedReading.Refused.class);
    }

    @Test
    void whateverComesNothingBreaks() {
        SplittableRandom random = new SplittableRandom(5);
        byte[] sound = "{\"air_C\": 4.1, \"rh_percent\": 83}".getBytes(UTF_8);
        for (int i = 0; i < 10_000; i++) {
            byte[] payload = sound.clone();
            for (int changed = random.nextInt(4); changed >= 0; changed--) {
                payload[random.nextInt(payload.length)] = (byte) random.nextInt(256);
            }
            if (HandedReading.read(payload, false) instanceof HandedReading.Taken taken
                    && taken.reading().airC() instanceof Reading.Value airC) {
                assertThat(airC.value()).isFinite();
            }
        }
        assertThat(HandedReading.read(new byte[HandedReading.MOST_BYTES + 1], false))
                .isInstanceOf(HandedReading.Refused.class);
    }

    private static HandedReading read(String payload) {
        return HandedReading.read(payload.getBytes(UTF_8), false);
    }

    private static HandedReading reading(Reading airC, Reading rhPercent) {
        return new HandedReading.Taken(new SensorReading(airC, rhPercent));
    }

    private static Reading value(double value) {
        return new Reading.Value(value, 0);
    }
}
