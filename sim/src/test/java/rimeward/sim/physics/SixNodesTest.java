package rimeward.sim.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The written-out rows against the general network, which is checked against the outside world in {@code rimeward.reference}. */
class SixNodesTest {
    private static final int ELEMENT = 0;
    private static final int DRYER = 1;
    private static final int FILM = 2;
    private static final int VAPOUR = 3;
    private static final int MASS = 4;
    private static final int AIR = 5;
    private static final double[] CAPACITY = {2000, 3000, 0, 50, 4e6, 170_000};
    private static final double STEP_S = 5;

    private final Network network = new Network(6);
    private final SixNodes nodes =
            new SixNodes(CAPACITY[ELEMENT], CAPACITY[DRYER], CAPACITY[VAPOUR], CAPACITY[MASS], CAPACITY[AIR]);

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void doAsTheGeneralNetworkDoes(long seed) {
        Random random = new Random(seed);
        State now = state(random);
        layBoth(random);
        network.step(STEP_S);
        nodes.step(now, STEP_S);
        assertThat(nodes.elementC).isCloseTo(network.mean(ELEMENT), withinPercentage(1e-9));
        assertThat(nodes.dryerC).isCloseTo(network.mean(DRYER), withinPercentage(1e-9));
        assertThat(nodes.filmC).isCloseTo(network.mean(FILM), withinPercentage(1e-9));
        assertThat(nodes.humidityKgPerKg).isCloseTo(network.mean(VAPOUR), withinPercentage(1e-9));
        assertThat(nodes.massC).isCloseTo(network.mean(MASS), withinPercentage(1e-9));
        assertThat(nodes.airC).isCloseTo(network.mean(AIR), withinPercentage(1e-9));
        assertThat(nodes.followsAirC(9, 120)).isCloseTo(network.follower(AIR, 9, 120), withinPercentage(1e-9));
    }

    private State state(Random random) {
        State now = new State();
        now.elementC = 40 * random.nextDouble();
        now.dryerC = 30 * random.nextDouble();
        now.humidityKgPerKg = 0.003 + 0.003 * random.nextDouble();
        now.massC = 5 + 5 * random.nextDouble();
        now.airC = 4 + 5 * random.nextDouble();
        double[] values = {now.elementC, now.dryerC, 0, now.humidityKgPerKg, now.massC, now.airC};
        for (int node = 0; node < values.length; node++) {
            network.capacity(node, CAPACITY[node]);
            network.value(node, values[node]);
        }
        return now;
    }

    private void layBoth(Random random) {
        nodes.intoElement = 1500 * random.nextDouble();
        network.source(ELEMENT, nodes.intoElement);
        nodes.intoDryer = 500 * random.nextDouble();
        network.source(DRYER, nodes.intoDryer);
        nodes.intoFilm = -800 * random.nextDouble();
        network.source(FILM, nodes.intoFilm);
        nodes.intoVapour = 1e-3 * random.nextDouble();
        network.source(VAPOUR, nodes.intoVapour);
        nodes.intoMass = 900 * random.nextDouble();
        network.source(MASS, nodes.intoMass);
        nodes.intoAir = 100 * random.nextDouble();
        network.source(AIR, nodes.intoAir);
        nodes.elementToAir = 20 * random.nextDouble();
        network.link(ELEMENT, AIR, nodes.elementToAir);
        nodes.dryerToAir = 20 * random.nextDouble();
        network.link(DRYER, AIR, nodes.dryerToAir);
        nodes.dryerOfVapour = -2000 * random.nextDouble();
        network.flow(DRYER, VAPOUR, -nodes.dryerOfVapour);
        nodes.filmOfFilm = 300 + 300 * random.nextDouble();
        network.flow(FILM, FILM, -nodes.filmOfFilm);
        nodes.filmOfVapour = -90_000 * random.nextDouble();
        network.flow(FILM, VAPOUR, -nodes.filmOfVapour);
        nodes.filmOfMass = -30 * random.nextDouble();
        network.flow(FILM, MASS, -nodes.filmOfMass);
        nodes.filmOfAir = -200 * random.nextDouble();
        network.flow(FILM, AIR, -nodes.filmOfAir);
        nodes.vapourOfFilm = -1e-5 * random.nextDouble();
        network.flow(VAPOUR, FILM, -nodes.vapourOfFilm);
        nodes.vapourOfVapour = 0.05 * random.nextDouble();
        network.flow(VAPOUR, VAPOUR, -nodes.vapourOfVapour);
        nodes.vapourOfMass = -1e-5 * random.nextDouble();
        network.flow(VAPOUR, MASS, -nodes.vapourOfMass);
        nodes.massOfFilm = -30 * random.nextDouble();
        network.flow(MASS, FILM, -nodes.massOfFilm);
        nodes.massOfVapour = -20_000 * random.nextDouble();
        network.flow(MASS, VAPOUR, -nodes.massOfVapour);
        nodes.massOfMass = 200 * random.nextDouble();
        network.flow(MASS, MASS, -nodes.massOfMass);
        nodes.massOfAir = -90 * random.nextDouble();
        network.flow(MASS, AIR, -nodes.massOfAir);
        nodes.airOfFilm = -200 * random.nextDouble();
        network.flow(AIR, FILM, -nodes.airOfFilm);
        nodes.airOfMass = -90 * random.nextDouble();
        network.flow(AIR, MASS, -nodes.airOfMass);
        nodes.airOfAir = 300 + 300 * random.nextDouble();
        network.flow(AIR, AIR, -nodes.airOfAir);
    }
}
