package rimeward.core.tunnel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class TunnelModelTest {
    private final TunnelModel tunnel = new TunnelModel(100, 150_000, 8e6, 200, 120);

    /** The same two nodes in small explicit steps: air 10 °C, mass 10 °C, outside 0 °C. */
    private static double steppedC(double horizonS) {
        double airC = 10;
        double massC = 10;
        for (double t = 0; t < horizonS; t++) {
            double betweenW = 200 * (massC - airC);
            airC += (betweenW - 100 * airC) / 150_000;
            massC -= betweenW / 8e6;
        }
        return airC;
    }

    @Test
    void freeFloatFollowsTheTwoNodesItStandsFor() {
        for (double horizonS : new double[] {60, 600, 3600, 14_400}) {
            assertThat(tunnel.freeFloatC(10, 0, horizonS))
                    .as("after %.0f s", horizonS)
                    .isCloseTo(steppedC(horizonS), within(0.15));
        }
    }

    @Test
    void heatToHoldAndCapabilityAreEachOthersInverse() {
        assertThat(tunnel.heatToHoldW(5, -5)).isEqualTo(1000);
        assertThat(tunnel.capabilityC(5, 1000)).isEqualTo(-5);
    }

    @Test
    void theTimeLeftEndsWhereFreeFloatMeetsTheLimit() {
        double leftS = tunnel.floatsAboveS(10, 5, 0).orElseThrow();
        assertThat(tunnel.freeFloatC(10, 0, leftS)).isLessThanOrEqualTo(5);
        assertThat(tunnel.freeFloatC(10, 0, leftS - 60)).isGreaterThan(5);
        assertThat(tunnel.floatsAboveS(10, 5, 6))
                .as("never, when outside is warmer")
                .isEmpty();
    }
}
