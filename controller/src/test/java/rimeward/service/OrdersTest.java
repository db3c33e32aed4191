package rimeward.service;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rimeward.alert.AlertBoard;
import rimeward.alert.AlertKind;
import rimeward.core.ControlCycle;
import rimeward.core.ControlState;
import rimeward.core.Stepped;
import rimeward.core.decision.DutyLaw;
import rimeward.core.order.Answer;
import rimeward.core.order.KnownTunnel;
import rimeward.core.order.Order;
import rimeward.core.order.Standing;
import rimeward.core.outlook.Outlook;
import rimeward.core.reading.Frame;
import rimeward.core.reading.Reading;
import rimeward.core.reading.Tick;
import rimeward.core.reading.WallTime;
import rimeward.fixture.Frames;
import rimeward.fixture.Sites;
import rimeward.port.ForecastSource;
import rimeward.port.Health;
import rimeward.port.Orders;
import rimeward.record.SavedState;
import rimeward.site.Plant;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/** The grower's orders through the whole loop. */
class OrdersTest {
    private static final RelaySet NONE = RelaySet.none();
    private static final RelaySet STAGE_1 = NONE.with(Sites.STAGE_1);
    private static final RelaySet STAGE_2 = NONE.with(Sites.STAGE_2);

    private final DutyLaw law = new DutyLaw();
    private final Frames frames = Frames.steady(8, 60);
    private final OrderQueue queue = new OrderQueue();
    private final List<Answer> answers = new ArrayList<>();
    private final List<RelaySet> commands = new ArrayList<>();
    private final List<AlertKind> told = new ArrayList<>();
    private Site site = Sites.unmetered();
    private Orders orders = queue;
    private Standing standing = Standing.NONE;
    private Frame now = frames.after(0);
    private ControlState state = new ControlCycle(site, law).start();
    private Outlook outlook = Outlook.NONE;
    private double floorC;
    private String kept = "";
    private int beats;
    private boolean clockTrusted = true;

    private static final class Source implements ForecastSource {
        private final boolean canAsk;

        Source(boolean canAsk) {
            this.canAsk = canAsk;
        }

        @Override
        public Outlook latest(Tick tick) {
            return Outlook.NONE;
        }

        @Override
        public boolean askAnew() {
            return canAsk;
        }
    }

    private ForecastSource source = new Source(false);

    @BeforeEach
    void noMeters() {
        for (int machine = 0; machine < 4; machine++) {
            frames.power(machine, Reading.NOT_FITTED);
        }
    }

    /** One after the other in one loop. */
    private void run(int ticks) {
        int[] left = {ticks};
        new ControlLoop(
                        site,
                        new ControlCycle(site, law),
                        new AlertBoard(site),
                        () -> {
                            frames.jitter(0.01 * (beats++ % 2));
                            now = frames.after(5);
                            return left[0]-- > 0 ? Optional.of(now.tick()) : Optional.empty();
                        },
                        () -> now.senses(),
                        source,
                        commands::add,
                        (stepped, alerts) -> heard(stepped),
                        StateKeeper.of(site, law, "boot", 0, saved -> kept = saved.toText()),
                        alert -> told.add(alert.kind()),
                        new Grower(orders, answers::add, standing),
                        Health.sound())
                .run(state);
        standing = SavedState.parse(kept).standing();
    }

    private void heard(Stepped stepped) {
        state = stepped.next();
        outlook = stepped.outcome().outlook();
        floorC = stepped.outcome().floorC();
    }

    /** Goes on as a new start of the program would. */
    private void restart(int ticks) {
        SavedState saved = SavedState.parse(kept);
        state = StateKeeper.restored(saved, site, law, new ControlCycle(site, law));
        standing = Restart.standing(saved, site, new WallTime(now.tick().wall().epochMs(), clockTrusted));
        run(ticks);
    }

    private RelaySet last() {
        return commands.get(commands.size() - 1);
    }

    private Answer answer() {
        return answers.get(answers.size() - 1);
    }

    private void order(Order order) {
        assertThat(queue.offer(order)).isTrue();
    }

    // ---- the floor

    @Test
    void aHigherFloorIsHeldFromTheSameTick() {
        run(20);
        assertThat(last()).isEqualTo(NONE);
        order(new Order.SetFloor(8));
        run(1);
        assertThat(last()).isEqualTo(STAGE_1);
        assertThat(floorC).isEqualTo(8);
        assertThat(answer().taken()).isTrue();
        assertThat(answer().text()).startsWith("The floor is 8.0 °C from now on, and heat comes on at 8.7 °C.");
    }

    @Test
    void theAlertBoardGoesByTheOrderedFloor() {
        order(new Order.SetFloor(9));
        run(30);
        assertThat(told).contains(AlertKind.FLOOR_CROSSED);
    }

    @ParameterizedTest
    @ValueSource(doubles = {3.99, -20, 25.31, 20.01, 40})
    void aFloorOutsideTheLimitsChangesNothing(double askedC) {
        order(new Order.SetFloor(askedC));
        run(1);
        assertThat(floorC).isEqualTo(4);
        assertThat(answer().taken()).isFalse();
        assertThat(answer().text()).startsWith("The floor stays").endsWith("Ask for 4.0 to 20.0 °C.");
    }

    @Test
    void anOrderedFloorOutlivesARestartButNotOtherPlants() {
        order(new Order.SetFloor(6));
        run(1);
        restart(1);
        assertThat(floorC).isEqualTo(6);
        site = withPlants(List.of(new Plant("lemon", 4), new Plant("pelargonium", 3.5)));
        restart(1);
        assertThat(floorC).as("the settings have changed since").isEqualTo(4);
    }

    @Test
    void theSettingsFloorCanBeAskedForAgain() {
        order(new Order.SetFloor(6));
        order(new Order.SetFloor(4));
        run(1);
        assertThat(floorC).isEqualTo(4);
        assertThat(answer().text()).endsWith("That is the settings' own.");
        restart(1);
        assertThat(standing).isEqualTo(Standing.NONE);
    }

    // ---- the tunnel

    private Order known(double heatLossWPerK) {
        return new Order.KnowTunnel(
                new KnownTunnel.Learned(heatLossWPerK, 150_000, 8e6, 180, 12, Restart.tunnelMark(site)));
    }

    @Test
    void aLearnedTunnelIsHeldByAndOutlivesARestartButNotAnotherTunnel() {
        order(known(160));
        run(1);
        assertThat(answer().taken()).isTrue();
        assertThat(answer().text())
                .isEqualTo("12 nights teach that the tunnel loses 160 W/K; the settings say 110 W/K. Control goes by"
                        + " what the nights teach.");
        order(new Order.SetFloor(6));
        run(1);
        restart(1);
        assertThat(floorC).isEqualTo(6);
        assertThat(standing.tunnel())
                .isInstanceOfSatisfying(
                        KnownTunnel.Learned.class,
                        tunnel -> assertThat(tunnel.heatLossWPerK()).isEqualTo(160));
        site = Sites.losing(140);
        restart(1);
        assertThat(standing.tunnel()).as("the settings have changed since").isEqualTo(KnownTunnel.AS_IN_SETTINGS);
    }

    @Test
    void theColderItGetsOfItselfTheMoreHeatAWorseTunnelTakes() {
        for (int sensor = 0; sensor < 3; sensor++) {
            frames.air(sensor, Reading.NO_ANSWER); // blind: the heater goes by outside and the heat loss
        }
        frames.outside(-6);
        run(2000);
        long before = commands.stream().filter(set -> set.has(Sites.STAGE_1)).count();
        commands.clear();
        order(known(190));
        run(2000);
        assertThat(commands.stream().filter(set -> set.has(Sites.STAGE_1)).count())
                .isGreaterThan(before);
    }

    @ParameterizedTest
    @ValueSource(doubles = {54, 221, -100, 0, Double.NaN, Double.POSITIVE_INFINITY})
    void aTunnelFarFromTheSettingsIsNotBelieved(double heatLossWPerK) {
        order(known(heatLossWPerK));
        run(1);
        assertThat(answer().taken()).isFalse();
        assertThat(answer().text()).contains("control goes by the settings. Check [tunnel]");
        assertThat(standing.tunnel()).isEqualTo(KnownTunnel.AS_IN_SETTINGS);
    }

    private Site withPlants(List<Plant> plants) {
        return new Site(
                site.id(),
                site.name(),
                plants,
                site.targets(),
                site.tunnel(),
                site.sensors(),
                site.heater(),
                site.drying(),
                site.venting(),
                site.circuit(),
                site.tariff());
    }

    // ---- standing down

    @Test
    void aStageThatStandsDownIsOpenForItsTimeAndAnotherHoldsTheFloor() {
        frames.inside(4.6);
        run(20);
        assertThat(last()).isEqualTo(STAGE_1);
        commands.clear();
        order(new Order.StandDown("stage-1", 600));
        run(120);
        assertThat(commands).hasSize(120).allMatch(set -> !set.has(Sites.STAGE_1));
        assertThat(commands.get(0)).as("in the same tick").isEqualTo(STAGE_2);
        assertThat(commands).allMatch(set -> set.has(Sites.STAGE_2));
        assertThat(answer().text())
                .startsWith("stage-1 stands down for 10 min and then comes back by itself. A relay is no isolation, and"
                        + " this one closes whenever the controller stops: unplug the machine before you touch it.");
        frames.inside(4.2);
        run(60);
        assertThat(last().has(Sites.STAGE_1)).as("back by itself").isTrue();
    }

    @Test
    void itIsBackAtOnceWhenAskedFor() {
        frames.inside(4.2);
        order(new Order.StandDown("stage-1", 600));
        run(40);
        assertThat(last().has(Sites.STAGE_1)).isFalse();
        order(new Order.StandDown("stage-1", 0));
        run(40);
        assertThat(last().has(Sites.STAGE_1)).isTrue();
        assertThat(answer().text()).startsWith("stage-1 is in use again.");
    }

    @Test
    void theOnlyHeatMayStandDownAndTheAnswerSaysSo() {
        frames.inside(3);
        order(new Order.StandDown("stage-1", 600));
        order(new Order.StandDown("stage-2", 600));
        order(new Order.StandDown("dryer", 600));
        run(100);
        assertThat(answers.get(1).text()).endsWith("No heater is left: until then the dryer's heat is all there is.");
        assertThat(answer().text()).endsWith("Nothing else gives heat: until then the plants are on their own.");
        assertThat(commands).allMatch(RelaySet::isEmpty);
    }

    @Test
    void anUnknownMachineIsNamedAsSuch() {
        order(new Order.StandDown("stage-9", 600));
        run(1);
        assertThat(answer().taken()).isFalse();
        assertThat(answer().text()).contains("stage-1, stage-2, dryer, vent");
    }

    @Test
    void handsMayStillBeInsideAfterARestart() {
        frames.inside(4.2);
        order(new Order.StandDown("stage-1", 600));
        run(60);
        restart(59);
        assertThat(commands).hasSize(119).allMatch(set -> !set.has(Sites.STAGE_1));
        run(60);
        assertThat(last().has(Sites.STAGE_1)).isTrue();
    }

    @Test
    void noTimeIsTakenOffForAPowerCutThatNobodyTimed() {
        frames.inside(4.2);
        order(new Order.StandDown("stage-1", 600));
        run(60);
        SavedState saved = SavedState.parse(kept);
        ControlState resumed = StateKeeper.restored(saved, site, law, new ControlCycle(site, law));
        assertThat(resumed.guard().standDowns().leftS(Sites.STAGE_1)).isBetween(300.0, 360.0);
    }

    // ---- forecasts

    @Test
    void aForecastHandedOverIsUsedUntilItsNightIsOver() {
        order(new Order.HandForecast(new Outlook.Night(7, -6, 1.5, 60)));
        run(1);
        assertThat(outlook).isEqualTo(new Outlook.Night(7, -6, 1.5, 60));
        assertThat(answer().taken()).isTrue();
        run(10); // ten ticks, and one that ended the run before
        assertThat(outlook).isEqualTo(new Outlook.Night(7, -6, 1.5, 5));
        run(1);
        assertThat(outlook).isEqualTo(Outlook.NONE);
    }

    @Test
    void aForecastHandedOverOutlivesARestartAndCanBeTakenBack() {
        order(new Order.HandForecast(new Outlook.Night(7, -6, 1.5, 600)));
        run(1);
        restart(1);
        assertThat(outlook).isEqualTo(new Outlook.Night(7, -6, 1.5, 590));
        order(new Order.HandForecast(Outlook.NONE));
        run(1);
        assertThat(outlook).isEqualTo(Outlook.NONE);
    }

    @Test
    void aForecastOfUnknownAgeIsNotUsedAfterARestart() {
        order(new Order.HandForecast(new Outlook.Night(7, -6, 1.5, 600)));
        run(1);
        clockTrusted = false;
        restart(1);
        assertThat(outlook).isEqualTo(Outlook.NONE);
    }

    @Test
    void aNightThatIsOverIsRefused() {
        order(new Order.HandForecast(new Outlook.Night(7, -6, 1.5, 0)));
        run(1);
        assertThat(answer().taken()).isFalse();
        assertThat(outlook).isEqualTo(Outlook.NONE);
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void planningNowAsksTheSourceOrSaysThatThereIsNone(boolean canAsk) {
        source = new Source(canAsk);
        order(new Order.PlanNow());
        run(1);
        assertThat(answer().taken()).isTrue();
        assertThat(answer().text()).contains(canAsk ? "asked for anew" : "no forecast's source can be asked");
    }

    // ---- the door

    @Test
    void aDoorThatFailsOrFloodsNeverReachesControl() {
        orders = () -> {
            throw new IllegalStateException("broken on purpose");
        };
        run(20);
        assertThat(commands).hasSize(20);
        assertThat(told).contains(AlertKind.DOOR_FAILED);
        orders = () -> Collections.nCopies(1000, new Order.SetFloor(5));
        run(1);
        assertThat(answers).hasSize(1000);
        assertThat(answers.stream().filter(Answer::taken)).hasSize(OrderQueue.MOST_A_TICK);
    }

    @Test
    void aFullQueueSaysSoAndKeepsTheOrder() {
        for (int i = 0; i < OrderQueue.MOST_WAITING; i++) {
            order(new Order.SetFloor(4 + i * 0.5));
        }
        assertThat(queue.offer(new Order.PlanNow())).isFalse();
        run(1);
        assertThat(answers).extracting(Answer::order).first().isEqualTo(new Order.SetFloor(4));
        assertThat(answers).hasSize(OrderQueue.MOST_A_TICK);
        run(10);
        assertThat(answers).hasSize(OrderQueue.MOST_WAITING);
        assertThat(floorC).isEqualTo(11.5);
    }
}
