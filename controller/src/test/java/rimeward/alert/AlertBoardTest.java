package rimeward.alert;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import rimeward.core.ControlCycle;
import rimeward.core.ControlState;
import rimeward.core.Stepped;
import rimeward.core.decision.Cause;
import rimeward.core.decision.ControlLaw;
import rimeward.core.decision.Decision;
import rimeward.core.decision.DutyLaw;
import rimeward.core.decision.LawState;
import rimeward.core.decision.Reason;
import rimeward.core.decision.Situation;
import rimeward.core.outlook.Outlook;
import rimeward.core.reading.Reading;
import rimeward.core.reading.Signal;
import rimeward.fixture.Frames;
import rimeward.fixture.Sites;
import rimeward.site.RelaySet;
import rimeward.site.Site;
import rimeward.site.Venting;

class AlertBoardTest {
    private final Site site = Sites.metered();
    private ControlCycle cycle = new ControlCycle(site, new DutyLaw());
    private AlertBoard board = new AlertBoard(site);
    private final Frames frames = Frames.steady(8, 60);
    private ControlState state = cycle.start();

    private List<Alert> run(int ticks) {
        List<Alert> all = new ArrayList<>();
        for (int i = 0; i < ticks; i++) {
            frames.jitter(0.01 * (i % 2));
            Stepped stepped = cycle.step(state, frames.after(5), Outlook.NONE);
            state = stepped.next();
            all.addAll(board.after(stepped.outcome()));
        }
        return all;
    }

    private static List<String> briefly(List<Alert> alerts) {
        return alerts.stream()
                .map(a -> a.kind() + " " + a.subject() + " " + a.change())
                .toList();
    }

    @Test
    void aQuietNightSaysNothing() {
        assertThat(run(2000)).isEmpty();
    }

    @Test
    void aLostSensorIsToldOnceAndClearedOnce() {
        run(10);
        frames.air(1, Reading.NO_ANSWER);
        List<Alert> lost = run(500);
        assertThat(briefly(lost)).containsExactly("SENSOR_LOST middle RAISED");
        assertThat(lost.get(0).text())
                .isEqualTo(
                        "middle (temperature) gives no reading. The others carry on, and reckon with how much colder its"
                                + " bench usually is. Look at it.");
        frames.air(1, Frames.value(8));
        assertThat(briefly(run(500))).containsExactly("SENSOR_LOST middle CLEARED");
    }

    @Test
    void aSensorThatFlickersDoesNotFlap() {
        List<Alert> all = new ArrayList<>();
        for (int i = 0; i < 100; i++) {
            frames.air(1, i % 2 == 0 ? Reading.NO_ANSWER : Frames.value(8));
            all.addAll(run(5));
        }
        assertThat(all).isEmpty();
    }

    @Test
    void blindnessIsToldAtOnce() {
        run(10);
        for (int i = 0; i < 3; i++) {
            frames.air(i, Reading.NO_ANSWER);
        }
        assertThat(briefly(run(1))).containsExactly("BLIND test-tunnel RAISED");
    }

    @Test
    void crossingTheFloorNamesTheNumbersAndWhatToDo() {
        List<Alert> alerts = new ArrayList<>(run(10));
        for (double airC = 8; airC > 3.5; airC -= 0.05) {
            frames.inside(airC);
            alerts.addAll(run(2));
        }
        Alert floor = alerts.stream()
                .filter(a -> a.kind() == AlertKind.FLOOR_CROSSED)
                .findFirst()
                .orElseThrow();
        assertThat(floor.text())
                .isEqualTo(
                        "The coldest bench is at 3.7 °C; the floor is 4.0 °C. Cover the plants or bring in heat now.");
    }

    @Test
    void aHeaterWithoutPowerIsTold() {
        frames.inside(4.4);
        assertThat(briefly(run(40))).contains("HEAT_NOT_ARRIVING stage-1 RAISED");
    }

    @Test
    void aHeaterThatRestsIsNotMendedByThat() {
        frames.inside(4.4);
        run(40);
        frames.inside(6); // the sun is up
        assertThat(run(500)).isEmpty();
        frames.inside(4.4);
        frames.power(0, Frames.value(990));
        assertThat(briefly(run(500))).contains("HEAT_NOT_ARRIVING stage-1 CLEARED");
    }

    @Test
    void aFullTankIsTold() {
        run(10);
        frames.tank(Signal.ON);
        assertThat(briefly(run(1))).containsExactly("TANK_FULL test-tunnel RAISED");
        frames.tank(Signal.OFF);
        assertThat(briefly(run(100))).containsExactly("TANK_FULL test-tunnel CLEARED");
    }

    @Test
    void aPowerCutIsToldAfterwards() {
        run(10);
        Stepped back = cycle.step(state, frames.after(1800), Outlook.NONE);
        List<Alert> alerts = board.after(back.outcome());
        assertThat(briefly(alerts)).containsExactly("POWER_WAS_CUT test-tunnel RAISED");
        assertThat(alerts.get(0).text()).startsWith("The power was cut for 30 minutes. Coldest bench now 7.8 °C");
    }

    @Test
    void everyPowerCutIsToldAndShownForHalfADay() {
        run(10);
        frames.after(600);
        List<Alert> first = run(100);
        assertThat(briefly(first)).containsExactly("POWER_WAS_CUT test-tunnel RAISED");
        frames.after(600);
        List<Alert> second = run(1000);
        assertThat(briefly(second))
                .containsExactly("POWER_WAS_CUT test-tunnel CLEARED", "POWER_WAS_CUT test-tunnel RAISED");
        assertThat(second.get(0).id()).isEqualTo(first.get(0).id());
        assertThat(second.get(1).id()).isNotEqualTo(first.get(0).id()).matches("power-was-cut-test-tunnel-[0-9]+");
        List<Alert> end = run(8640);
        assertThat(briefly(end)).containsExactly("POWER_WAS_CUT test-tunnel CLEARED");
        assertThat(end.get(0).id()).isEqualTo(second.get(1).id());
    }

    @Test
    void plantsBelowTheirMinimumAreToldAgainAndAgainAndLessOftenToWhoKnows() {
        frames.inside(3.5);
        frames.power(0, Frames.value(990));
        frames.power(1, Frames.value(1990));
        run(40);
        String id = board.saved().stream()
                .filter(slot -> slot.kind() == AlertKind.FLOOR_CROSSED)
                .map(slot -> Alert.id(slot.kind(), slot.subject(), slot.number()))
                .findFirst()
                .orElseThrow();
        assertThat(floors(run(720))).containsExactly("REPEATED", "REPEATED", "REPEATED", "REPEATED");
        assertThat(board.acknowledge("floor-crossed-test-tunnel-1")).isFalse();
        assertThat(board.acknowledge(id)).isTrue();
        assertThat(floors(run(1))).containsExactly("ACKNOWLEDGED");
        assertThat(board.acknowledge(id)).isTrue();
        assertThat(floors(run(720))).as("known twice, told once").containsExactly("REPEATED");
        frames.inside(5);
        List<Alert> over = run(400);
        assertThat(floors(over)).containsExactly("CLEARED");
        assertThat(over.stream().filter(a -> a.kind() == AlertKind.FLOOR_CROSSED))
                .allMatch(a -> a.id().equals(id));
        assertThat(board.acknowledge(id)).isFalse();
    }

    private static List<String> floors(List<Alert> alerts) {
        return alerts.stream()
                .filter(alert -> alert.kind() == AlertKind.FLOOR_CROSSED)
                .map(alert -> alert.change().name())
                .toList();
    }

    @Test
    void whatWasAcknowledgedAndItsIdSurviveARestart() {
        frames.inside(3.5);
        run(40);
        AlertBoard other = new AlertBoard(site);
        other.resume(board.saved(), 0, true);
        assertThat(other.saved()).isEqualTo(board.saved());
    }

    @Test
    void aStageLeftToItsOwnThermostatDuringAPowerCutIsNotWelded() {
        run(10);
        frames.power(0, Frames.value(990));
        frames.after(1800);
        List<Alert> alerts = new ArrayList<>(run(1));
        frames.power(0, Frames.value(0)); // the controller has opened its relay
        alerts.addAll(run(30));
        assertThat(briefly(alerts)).containsExactly("POWER_WAS_CUT test-tunnel RAISED");
    }

    @Test
    void aLoopThatStartsLateTellsOfNoPowerCut() {
        frames.after(80);
        assertThat(run(10)).isEmpty();
    }

    @Test
    void aLawThatFailsIsToldAndItsRecoveryToo() {
        boolean[] broken = {true};
        ControlLaw law = new ControlLaw() {
            @Override
            public String name() {
                return "trial";
            }

            @Override
            public LawState start(Site site) {
                return LawState.NOTHING;
            }

            @Override
            public Decision decide(Situation now, LawState state) {
                if (broken[0]) {
                    throw new IllegalStateException("bug");
                }
                Reason why = Reason.of(Cause.NOT_ASKED);
                return new Decision(RelaySet.none(), Collections.nCopies(4, why), state);
            }
        };
        cycle = new ControlCycle(site, law);
        state = cycle.start();
        assertThat(briefly(run(100))).containsExactly("LAW_FAILED test-tunnel RAISED");
        broken[0] = false;
        assertThat(run(100)).as("not before it has gone well for a while").isEmpty();
        assertThat(briefly(run(30))).containsExactly("LAW_FAILED test-tunnel CLEARED");
    }

    @Test
    void aDryerThatStopsByItselfInDampAirIsTold() {
        for (int sensor = 0; sensor < 3; sensor++) {
            frames.rh(sensor, Frames.value(90));
        }
        frames.inside(12);
        List<Alert> alerts = run(1500);
        assertThat(briefly(alerts)).containsExactly("DRYER_NOT_DRYING test-tunnel RAISED");
        assertThat(alerts.get(0).text()).startsWith("The dryer was switched on for an hour and the air is no drier.");
    }

    private Site withoutFan() {
        return Sites.of(site.heater(), site.drying(), new Venting.NoVentFan(), site.circuit());
    }

    @Test
    void whereThereIsNoFanTheGrowerIsToldWhenToOpenTheDoorAndWhenToCloseIt() {
        Site noFan = withoutFan();
        cycle = new ControlCycle(noFan, new DutyLaw());
        board = new AlertBoard(noFan);
        state = cycle.start();
        frames.inside(12).outside(9);
        for (int sensor = 0; sensor < 3; sensor++) {
            frames.rh(sensor, Frames.value(92));
        }
        assertThat(run(150)).as("a passing dry gust is no reason").isEmpty();
        List<Alert> open = run(60);
        assertThat(briefly(open)).containsExactly("AIRING test-tunnel RAISED");
        assertThat(open.get(0).text()).contains("Open the door.");
        for (int sensor = 0; sensor < 3; sensor++) {
            frames.rh(sensor, Frames.value(76));
        }
        assertThat(run(100)).as("dry enough only below 70 %").isEmpty();
        frames.outside(6.6);
        assertThat(run(20)).as("half a kelvin more before it is too cold").isEmpty();
        frames.outside(6.4);
        List<Alert> close = run(100);
        assertThat(briefly(close)).containsExactly("AIRING test-tunnel CLEARED");
        assertThat(close.get(0).text()).startsWith("Close the door again, if it is open: outside air");
    }

    @Test
    void whereAFanAirsNobodyIsSentToTheDoor() {
        frames.inside(12).outside(9);
        for (int sensor = 0; sensor < 3; sensor++) {
            frames.rh(sensor, Frames.value(92));
        }
        assertThat(briefly(run(400))).doesNotContain("AIRING test-tunnel RAISED");
    }

    @Test
    void theOnlySensorThatIsDoubtedIsNotSaidToHaveOthers() {
        for (int sensor = 0; sensor < 3; sensor++) {
            frames.air(sensor, Reading.NO_ANSWER);
        }
        assertThat(run(40))
                .filteredOn(alert -> alert.kind() == AlertKind.SENSOR_LOST)
                .hasSize(3)
                .allSatisfy(
                        alert -> assertThat(alert.text()).endsWith("gives no reading. No other is left. Look at it."));
    }
}
