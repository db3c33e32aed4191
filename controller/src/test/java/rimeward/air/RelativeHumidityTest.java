package rimeward.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class RelativeHumidityTest {

    @Test
    void conventionsUndoThemselves() {
        for (double airC = -30; airC <= 40; airC += 1.3) {
            double vapourPa = RelativeHumidity.vapourFromOverWaterPa(airC, 73);
            assertThat(RelativeHumidity.overWaterPercent(airC, vapourPa)).isCloseTo(73, within(1e-10));
        }
        double overIcePa = RelativeHumidity.vapourFromOverIceBelowFreezingPa(-8, 73);
        assertThat(RelativeHumidity.overIcePercent(-8, overIcePa)).isCloseTo(73, within(1e-10));
    }

    @Test
    void conventionsAgreeAboveFreezingAndPartBelow() {
        assertThat(RelativeHumidity.vapourFromOverIceBelowFreezingPa(3, 60))
                .isEqualTo(RelativeHumidity.vapourFromOverWaterPa(3, 60));
        double vapourPa = RelativeHumidity.vapourFromOverWaterPa(-5, 90);
        assertThat(RelativeHumidity.overIcePercent(-5, vapourPa)).isBetween(94.0, 95.0);
    }
}
