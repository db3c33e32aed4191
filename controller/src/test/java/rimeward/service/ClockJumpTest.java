package rimeward.service;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rimeward.alert.AlertBoard;
import rimeward.core.ControlCycle;
import rimeward.core.decision.DutyLaw;
import rimeward.core.outlook.Outlook;
import rimeward.fixture.Frames;
import rimeward.fixture.Sites;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/** The clock is set by a day and, hours later, back again, while a cold night goes on. */
class ClockJumpTest {
    private static final int HOUR = 720; // beats

    private final Site site = Sites.metered();

    @ParameterizedTest
    @ValueSource(doubles = {86_400, -86_400})
    void isToldOnceAndClearedOnceAndMovesNoRelay(double byS) {
        List<String> untold = new ArrayList<>();
        List<RelaySet> undisturbed = night(0, untold);
        List<String> told = new ArrayList<>();
        assertThat(night(byS, told)).isEqualTo(undisturbed);
        assertThat(told)
                .containsExactly(
                        "CLOCK_JUMPED RAISED", "CLOCK_JUMPED CLEARED", "CLOCK_JUMPED RAISED", "CLOCK_JUMPED CLEARED");
        assertThat(untold).isEmpty();
        assertThat(undisturbed).contains(RelaySet.of(1), RelaySet.none());
    }

    /** Six hours of benches that swing about the floor band; the clock is set after one hour and back after four. */
    private List<RelaySet> night(double byS, List<String> told) {
        FakeTime time = new FakeTime();
        Frames frames = Frames.steady(6, 60);
        List<RelaySet> commands = new ArrayList<>();
        int[] beat = {0};
        BeatTicker ticker = new BeatTicker(time, 0, () -> {});
        new ControlLoop(
                        site,
                        new ControlCycle(site, new DutyLaw()),
                        new AlertBoard(site),
                        ticker,
                        () -> frames.inside(5.2 + 0.9 * StrictMath.sin(beat[0] / 90.0))
                                .after(5)
                                .senses(),
                        tick -> Outlook.NONE,
                        commands::add,
                        (stepped, alerts) -> {
                            beat[0]++;
                            time.setWall(beat[0] == HOUR ? byS : beat[0] == 4 * HOUR ? -byS : 0);
                            if (beat[0] == 6 * HOUR) {
                                ticker.stop();
                            }
                        },
                        StateKeeper.forgetful(),
                        alert -> {
                            if (alert.kind().name().startsWith("CLOCK")) {
                                told.add(alert.kind() + " " + alert.change());
                            }
                        })
                .run();
        return commands;
    }
}
