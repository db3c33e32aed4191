package rimeward.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rimeward.air.HylandWexler;
import rimeward.air.Saturation;

/**
 * Source: ASHRAE Fundamentals 2017, ch. 1, table 3 (thermodynamic properties of water at saturation); the values second-hand, as read in
 * the test suite of psychrolib. The table comes from a newer formulation than Hyland and Wexler's, hence 300 ppm.
 */
class SaturationPressureReferenceTest {

    private static final double TOLERANCE_PERCENT = 0.03;

    @ParameterizedTest
    @CsvSource({"-20, 103.24", "-5, 401.74", "5, 872.6", "25, 3169.7"})
    void agreesWithTheHandbookTable(double tC, double tablePa) {
        assertThat(Saturation.overSurfacePa(tC)).isCloseTo(tablePa, withinPercentage(TOLERANCE_PERCENT));
        double formulaPa = tC < 0 ? HylandWexler.overIcePa(tC) : HylandWexler.overWaterPa(tC);
        assertThat(formulaPa).isCloseTo(tablePa, withinPercentage(TOLERANCE_PERCENT));
    }
}
