package rimeward.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import rimeward.sim.physics.Network;

/** One lump under a two-position thermostat, against the closed solution. */
class OneNodeReferenceTest {
    private static final double LOSS_W_PER_K = 100;
    private static final double CAPACITY_J_PER_K = 1.8e6;
    private static final double HEATER_W = 2000;
    private static final double OUTSIDE_C = -5;
    private static final double ON_C = 2;
    private static final double OFF_C = 3;
    private static final double STEP_S = 5;

    private final Network network = new Network(1);

    @Test
    void hysteresis() {
        // Analytic: τ = C/U; on for τ ln(13/12), off for τ ln(8/7).
        network.capacity(0, CAPACITY_J_PER_K);
        network.value(0, ON_C);
        double onS = 0;
        double offS = 0;
        for (int cycle = 0; cycle < 10; cycle++) {
            onS += run(HEATER_W, OFF_C);
            offS += run(0, ON_C);
        }
        double periodS = (onS + offS) / 10;
        double duty = onS / (onS + offS);
        assertThat(periodS).isCloseTo(3844.33, within(3844.33 * 1e-4));
        assertThat(duty).isCloseTo(0.374777, within(0.374777 * 1e-4));
        assertThat(duty * HEATER_W).isCloseTo(749.55, within(749.55 * 1e-4));
    }

    /** Runs until the turn, which is placed within the last step by a straight line; returns how long it took. */
    private double run(double heaterW, double turnC) {
        double doneS = 0;
        while (true) {
            double fromC = network.value(0);
            step(heaterW, STEP_S);
            double toC = network.value(0);
            double share = (turnC - fromC) / (toC - fromC);
            if (share <= 1) {
                network.value(0, fromC);
                step(heaterW, share * STEP_S);
                return doneS + share * STEP_S;
            }
            doneS += STEP_S;
        }
    }

    private void step(double heaterW, double stepS) {
        network.clear();
        network.source(0, heaterW);
        network.bound(0, LOSS_W_PER_K, OUTSIDE_C);
        network.step(stepS);
    }
}
