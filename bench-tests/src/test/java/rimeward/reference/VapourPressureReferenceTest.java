package rimeward.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import rimeward.air.RelativeHumidity;
import rimeward.air.Saturation;

/** Source: Allen et al. 1998, FAO Irrigation and Drainage Paper 56, examples 4 and 5. */
class VapourPressureReferenceTest {

    private static final double TOLERANCE_KPA = 0.005;

    /** Example 4: an Assmann psychrometer reads 25.6 °C dry, 19.5 °C wet at 1200 m (87.9 kPa); eq. 15, 16 with 0.000662 1/K. */
    @Test
    void psychrometerReading() {
        double psychrometerKpaPerK = 0.000662 * 87.9;
        double vapourKpa = Saturation.overWaterPa(19.5) / 1000 - psychrometerKpaPerK * (25.6 - 19.5);
        assertThat(vapourKpa).isCloseTo(1.91, within(TOLERANCE_KPA));
    }

    /** Example 5: daily minimum 18 °C at 82 %, maximum 25 °C at 54 %; eq. 17. */
    @Test
    void meanOfTheDaysExtremes() {
        double morningPa = RelativeHumidity.vapourFromOverWaterPa(18, 82);
        double afternoonPa = RelativeHumidity.vapourFromOverWaterPa(25, 54);
        assertThat((morningPa + afternoonPa) / 2000).isCloseTo(1.70, within(TOLERANCE_KPA));
    }
}
