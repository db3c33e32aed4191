package rimeward.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import rimeward.sim.physics.Network;

/**
 * The tunnel's network of lumps as a room of two capacities, after VDI 6007 part 1 (2012), test cases 1 and 3: 1 kW of convective heat
 * from 6 to 18 h, all else at 22 °C. Second-hand: inputs and results as printed in public validation models of the guideline.
 */
class Vdi6007ReferenceTest {
    private static final int OUTER_MASS = 0;
    private static final int INNER_MASS = 1;
    private static final int OUTER_SURFACE = 2;
    private static final int INNER_SURFACE = 3;
    private static final int AIR = 4;

    private static final double STEP_S = 60;
    private static final double OUTER_M2 = 10.5;
    private static final double INNER_M2 = 75.5;

    /** A wall of the guideline: its inner resistance, K/W, its capacity, J/K. */
    private record Wall(double kPerW, double jPerK) {}

    @Test
    void heavyRoom() {
        Map<Integer, Double> airC =
                run(new Wall(0.00436791293674, 1600848.94), 0.03895919557, new Wall(0.000595693407511, 14836354.6282));
        assertThat(airC.get(7)).isCloseTo(27.7, within(0.15));
        assertThat(airC.get(18)).isCloseTo(30.0, within(0.15));
        assertThat(airC.get(19)).isCloseTo(24.5, within(0.15));
        assertThat(airC.get(59 * 24 + 18)).isCloseTo(56.2, within(0.15));
    }

    @Test
    void lightRoom() {
        Map<Integer, Double> airC = run(new Wall(0.00404935160802, 47900), 0.039330865, new Wall(0.003237138, 7297100));
        assertThat(airC.get(7)).isCloseTo(30.2, within(0.15));
        assertThat(airC.get(18)).isCloseTo(34.7, within(0.15));
        assertThat(airC.get(19)).isCloseTo(26.9, within(0.15));
        assertThat(airC.get(59 * 24 + 18)).isCloseTo(58.1, within(0.15));
    }

    /** Mean air temperature of each hour, by the number of hours at its end. */
    private static Map<Integer, Double> run(Wall outer, double remainingKPerW, Wall inner) {
        Network network = new Network(5);
        network.capacity(OUTER_MASS, outer.jPerK);
        network.capacity(INNER_MASS, inner.jPerK);
        network.value(OUTER_MASS, 22);
        network.value(INNER_MASS, 22);
        Map<Integer, Double> hourC = new TreeMap<>();
        double sumC = 0;
        for (int minute = 0; minute < 60 * 24 * 60; minute++) {
            int hour = minute / 60 % 24;
            network.clear();
            network.bound(OUTER_MASS, 1 / (remainingKPerW + 1 / (25 * OUTER_M2)), 22);
            network.link(OUTER_MASS, OUTER_SURFACE, 1 / outer.kPerW);
            network.link(INNER_MASS, INNER_SURFACE, 1 / inner.kPerW);
            network.link(OUTER_SURFACE, INNER_SURFACE, 5 * OUTER_M2);
            network.link(OUTER_SURFACE, AIR, 2.7 * OUTER_M2);
            network.link(INNER_SURFACE, AIR, 2.24 * INNER_M2);
            network.source(AIR, hour >= 6 && hour < 18 ? 1000 : 0);
            network.step(STEP_S);
            sumC += network.mean(AIR);
            if (minute % 60 == 59) {
                hourC.put(minute / 60 + 1, sumC / 60);
                sumC = 0;
            }
        }
        return hourC;
    }
}
