package rimeward.sim.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class NetworkTest {

    @Test
    void oneNodeFollowsTheExponential() {
        Network network = new Network(1);
        network.capacity(0, 1000);
        network.value(0, 10);
        for (int i = 0; i < 100; i++) {
            network.clear();
            network.bound(0, 10, 2); // time constant 100 s
            network.step(5);
        }
        assertThat(network.value(0)).isCloseTo(2 + 8 * Math.exp(-5), within(1e-5));
    }

    @Test
    void halvingTheStepDividesTheErrorByEight() {
        double coarse = Math.abs(decayed(20) - Math.exp(-2));
        double fine = Math.abs(decayed(10) - Math.exp(-2));
        assertThat(coarse / fine).isBetween(6.0, 10.0);
    }

    private static double decayed(double stepS) {
        Network network = new Network(1);
        network.capacity(0, 100);
        network.value(0, 1);
        for (double doneS = 0; doneS < 200; doneS += stepS) {
            network.clear();
            network.bound(0, 1, 0);
            network.step(stepS);
        }
        return network.value(0);
    }

    @Test
    void aHugeStepIsStable() {
        Network network = new Network(2);
        network.capacity(0, 10);
        network.capacity(1, 1e6);
        for (int i = 0; i < 50; i++) {
            network.clear();
            network.link(0, 1, 50);
            network.bound(0, 5, 7);
            network.step(1e5);
        }
        assertThat(network.value(0)).isCloseTo(7, within(0.1));
        assertThat(network.value(1)).isCloseTo(7, within(0.1));
    }

    @Test
    void whatOneNodeGivesTheOtherGets() {
        Network network = new Network(2);
        network.capacity(0, 300);
        network.capacity(1, 5000);
        network.value(0, 20);
        network.value(1, -3);
        double before = 300 * 20 - 5000 * 3;
        for (int i = 0; i < 1000; i++) {
            network.clear();
            network.link(0, 1, 12);
            network.step(7);
        }
        assertThat(300 * network.value(0) + 5000 * network.value(1)).isCloseTo(before, within(1e-8));
    }

    @Test
    void theMeanIsWhereTheStepsFlowsWere() {
        Network network = new Network(2);
        network.capacity(0, 300);
        network.capacity(1, 500);
        network.value(0, 20);
        network.clear();
        network.link(0, 1, 12);
        network.step(7);
        double movedJ = 12 * (network.mean(0) - network.mean(1)) * 7;
        assertThat(500 * network.value(1)).isCloseTo(movedJ, within(1e-9));
    }

    @Test
    void aNodeWithoutCapacityBalancesAtOnce() {
        Network network = new Network(2);
        network.capacity(1, 1000);
        network.value(1, 10);
        network.clear();
        network.link(0, 1, 3);
        network.bound(0, 1, -2);
        network.step(5);
        assertThat(network.mean(0)).isCloseTo((3 * network.mean(1) - 2) / 4, within(1e-12));
    }

    @Test
    void aFollowerLagsAndArrives() {
        Network network = new Network(1);
        network.capacity(0, 1);
        network.value(0, 10);
        double follower = 0;
        for (int i = 0; i < 20; i++) {
            network.clear();
            network.step(5);
            follower = network.follower(0, follower, 50);
        }
        assertThat(follower).isCloseTo(10 * (1 - Math.exp(-2)), within(1e-3));
    }
}
