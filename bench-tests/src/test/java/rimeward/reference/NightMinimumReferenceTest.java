package rimeward.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rimeward.core.outlook.Cooling;
import rimeward.core.outlook.KnownNight;
import rimeward.core.outlook.NightMinimum;
import rimeward.core.outlook.OutsideAir;

/**
 * Source: Snyder &amp; de Melo-Abreu, "Frost protection: fundamentals, practice and economics", FAO 2005, vol. 1, ch. 5; data and results
 * second-hand, from the documentation of CRAN's {@code frost} 0.0.4 ({@code predFAO}, {@code getTrend}).
 */
class NightMinimumReferenceTest {
    private static final double[] EVENING_C = {3.2, .8, .2, 2.6, 4.4, 5.2, 2.7, 1.2, 4.5, 5.6};
    private static final double[] DEW_C = {-4.2, -8.8, -6.5, -6.2, -6.1, 2.6, -.7, -1.7, -1.2, .1};
    private static final double[] LOWEST_C = {-3.1, -5, -6.3, -5.4, -4, -2.5, -4.8, -5, -4.4, -3.3};

    private static OutsideAir.Seen evening(double airC, double dewPointC) {
        return new OutsideAir.Seen(0, airC, OptionalDouble.of(dewPointC));
    }

    @Test
    void theWorkedExampleComesOut() {
        List<KnownNight> nights = new ArrayList<>();
        for (int i = 0; i < LOWEST_C.length; i++) {
            nights.add(new KnownNight(evening(EVENING_C[i], DEW_C[i]), LOWEST_C[i], EVENING_C[i] + 5));
        }
        assertThat(NightMinimum.after(evening(10, 2), nights).orElseThrow().airC())
                .isCloseTo(-0.7409219, within(1e-6));
    }

    /** Fifteen hours from sunset to sunrise, so thirteen from the evening's reading. */
    @Test
    void soDoesTheCoolingOfItsNight() {
        Cooling cooling = new Cooling(2 * 3600, 0.95, 15 * 3600, -5.45);
        assertThat(cooling.airC(3 * 3600)).isCloseTo(-0.8250406, within(1e-6));
        assertThat(cooling.airC(8 * 3600)).isCloseTo(-3.3979438, within(1e-6));
        assertThat(cooling.airC(12 * 3600)).isCloseTo(-4.6631713, within(1e-6));
        assertThat(cooling.airC(15 * 3600)).isCloseTo(-5.45, within(1e-9));
    }
}
