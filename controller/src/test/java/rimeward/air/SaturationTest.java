package rimeward.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** The tables against the formula they are made of; the formula against the outside world is in bench-tests. */
class SaturationTest {

    /** Not a divisor of the cell width, so that the points fall everywhere in the cells. */
    private static final double STEP_K = 0.0137;

    @Test
    void staysWithinAHundredMillionthOfTheFormula() {
        assertThat(worstRelativeError(Saturation::overWaterPa, HylandWexler::overWaterPa))
                .isLessThan(1e-8);
        assertThat(worstRelativeError(Saturation::overIcePa, HylandWexler::overIcePa))
                .isLessThan(1e-8);
    }

    @Test
    void slopesStayWithinAMillionth() {
        assertThat(worstRelativeError(Saturation::overWaterSlopePaPerK, HylandWexler::overWaterSlopePaPerK))
                .isLessThan(1e-6);
        assertThat(worstRelativeError(Saturation::overIceSlopePaPerK, HylandWexler::overIceSlopePaPerK))
                .isLessThan(1e-6);
    }

    @Test
    void formulaSlopeIsTheDerivativeOfTheFormula() {
        for (double tC = -59; tC < 89; tC += 7.3) {
            double h = 1e-3;
            double water = (HylandWexler.overWaterPa(tC + h) - HylandWexler.overWaterPa(tC - h)) / (2 * h);
            double ice = (HylandWexler.overIcePa(tC + h) - HylandWexler.overIcePa(tC - h)) / (2 * h);
            assertThat(HylandWexler.overWaterSlopePaPerK(tC) / water).isCloseTo(1, within(1e-7));
            assertThat(HylandWexler.overIceSlopePaPerK(tC) / ice).isCloseTo(1, within(1e-7));
        }
    }

    @Test
    void risesEverywhere() {
        for (double tC = -60; tC + STEP_K < 90; tC += STEP_K) {
            assertThat(Saturation.overWaterPa(tC + STEP_K)).isGreaterThan(Saturation.overWaterPa(tC));
            assertThat(Saturation.overIcePa(tC + STEP_K)).isGreaterThan(Saturation.overIcePa(tC));
        }
    }

    @Test
    void surfaceIsIceBelowFreezingAndWaterFromThereOn() {
        assertThat(Saturation.overSurfacePa(-0.001)).isEqualTo(Saturation.overIcePa(-0.001));
        assertThat(Saturation.overSurfacePa(0.0)).isEqualTo(Saturation.overWaterPa(0.0));
        assertThat(Saturation.overSurfaceSlopePaPerK(-5)).isEqualTo(Saturation.overIceSlopePaPerK(-5));
        assertThat(Saturation.overSurfaceSlopePaPerK(5)).isEqualTo(Saturation.overWaterSlopePaPerK(5));
    }

    @Test
    void outsideTheRangeGivesTheNearerEnd() {
        assertThat(Saturation.overIcePa(-200)).isEqualTo(Saturation.overIcePa(-60));
        assertThat(Saturation.overWaterPa(Double.POSITIVE_INFINITY)).isEqualTo(Saturation.overWaterPa(90));
        assertThat(Saturation.overWaterPa(Double.NaN)).isNaN();
    }

    private static double worstRelativeError(DoubleUnaryOperator fast, DoubleUnaryOperator formula) {
        double worst = 0;
        for (double tC = -60; tC <= 90; tC += STEP_K) {
            worst = Math.max(worst, Math.abs(fast.applyAsDouble(tC) / formula.applyAsDouble(tC) - 1));
        }
        return worst;
    }
}
