package rimeward.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rimeward.air.MoistAir;
import rimeward.air.RelativeHumidity;

/**
 * Source: EN ISO 13788 (its formulas second-hand): inside 20 °C and 50 %, outside 0 °C. The lowest surface temperature at which the air
 * at the surface stays below 80 % (mould) or 100 % (water), and the temperature factor that this asks of the wall.
 */
class SurfaceCondensationReferenceTest {

    private static final double INSIDE_C = 20;
    private static final double OUTSIDE_C = 0;

    @ParameterizedTest(name = "{0} % at the surface")
    @CsvSource({"80, 12.62, 0.631", "100, 9.27, 0.463"})
    void lowestSurfaceTemperature(double surfacePercent, double surfaceC, double factor) {
        double vapourPa = RelativeHumidity.vapourFromOverWaterPa(INSIDE_C, 50);
        double oursC = MoistAir.dewPointC(vapourPa / (surfacePercent / 100));
        assertThat(oursC).isCloseTo(surfaceC, within(0.01));
        assertThat((oursC - OUTSIDE_C) / (INSIDE_C - OUTSIDE_C)).isCloseTo(factor, within(0.01));
    }
}
