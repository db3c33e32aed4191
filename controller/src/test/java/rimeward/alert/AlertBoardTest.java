package rimeward.alert;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import rimeward.core.ControlCycle;
import rimeward.core.ControlState;
import rimeward.core.Stepped;
import rimeward.core.decision.DutyLaw;
import rimeward.core.outlook.Outlook;
import rimeward.core.reading.Reading;
import rimeward.core.reading.Signal;
import rimeward.fixture.Frames;
import rimeward.fixture.Sites;
import rimeward.site.Site;

class AlertBoardTest {
    private final Site site = Sites.metered();
    private final ControlCycle cycle = new ControlCycle(site, new DutyLaw());
    private final AlertBoard board = new AlertBoard(site);
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
        assertThat(briefly(lost)).containsExactly("SENSOR_DOUBTED middle RAISED");
        assertThat(lost.get(0).text())
                .isEqualTo(
                        "middle (temperature) gives no reading. The others carry on, and reckon with how much colder its"
                                + " bench usually is. Look at it.");
        frames.air(1, Frames.value(8));
        assertThat(briefly(run(500))).containsExactly("SENSOR_DOUBTED middle CLEARED");
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
        assertThat(briefly(run(20))).containsExactly("TANK_FULL test-tunnel CLEARED");
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
    void everyPowerCutIsToldAndNoneIsOver() {
        run(10);
        frames.after(600);
        assertThat(briefly(run(100))).containsExactly("POWER_WAS_CUT test-tunnel RAISED");
        frames.after(600);
        assertThat(briefly(run(1000))).containsExactly("POWER_WAS_CUT test-tunnel RAISED");
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
}
