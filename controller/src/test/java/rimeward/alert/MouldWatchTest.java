package rimeward.alert;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class MouldWatchTest {
    private static double share(double wetH, double airC) {
        return 1 / (1 + StrictMath.exp(-MouldWatch.logit(wetH, airC)));
    }

    /** Values of the published formula (Broome et al. 1995). */
    @Test
    void theCurveIsThePublishedOne() {
        assertThat(share(5, 15)).isCloseTo(0.1676603, within(1e-6));
        assertThat(share(3, 20)).isCloseTo(0.1312688, within(1e-6));
    }
}
