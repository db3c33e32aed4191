package rimeward.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rimeward.sim.physics.Network;

/** Two lumps that cool, against the closed solution. */
class TwoNodesReferenceTest {

    @ParameterizedTest
    @CsvSource({"1, 5.8999, 9.6724, 5", "12, 3.6681, 6.0556, 5", "1, 5.8999, 9.6724, 10", "12, 3.6681, 6.0556, 1"})
    void decay(double hours, double airC, double massC, double stepS) {
        // Analytic, by the two eigenvalues: 0.2 and 5 MJ/K, 150 W/K between them, 100 W/K from the first to 0 °C, both
        // from 10 °C.
        Network network = new Network(2);
        network.capacity(0, 2e5);
        network.capacity(1, 5e6);
        network.value(0, 10);
        network.value(1, 10);
        for (double doneS = 0; doneS < hours * 3600; doneS += stepS) {
            network.clear();
            network.link(0, 1, 150);
            network.bound(0, 100, 0);
            network.step(stepS);
        }
        assertThat(network.value(0)).isCloseTo(airC, within(1e-3));
        assertThat(network.value(1)).isCloseTo(massC, within(1e-3));
    }
}
