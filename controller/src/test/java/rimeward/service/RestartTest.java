package rimeward.service;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import rimeward.alert.Alert;
import rimeward.alert.AlertBoard;
import rimeward.core.ControlCycle;
import rimeward.core.ControlState;
import rimeward.core.ControlStep;
import rimeward.core.Stepped;
import rimeward.core.decision.DutyLaw;
import rimeward.core.judgement.Inside;
import rimeward.core.outlook.Outlook;
import rimeward.core.reading.Frame;
import rimeward.core.reading.Reading;
import rimeward.core.reading.Tick;
import rimeward.core.reading.WallTime;
import rimeward.fixture.Frames;
import rimeward.fixture.Sites;
import rimeward.record.SavedState;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/** The whole loop on frames, cut off and started again from the text that was kept last. */
class RestartTest {
    private final Site site = Sites.metered();
    private final DutyLaw law = new DutyLaw();
    private final ControlCycle control = new ControlCycle(site, law);
    private final Frames frames = Frames.steady(8, 60);
    private final List<String> told = new ArrayList<>();
    private final List<RelaySet> commands = new ArrayList<>();
    private String kept = "";
    private String brokenDoor = "";
    private AlertBoard board = new AlertBoard(site);
    private Frame now = frames.after(0);
    private ControlState last = control.start();
    private double coldestC;
    private int ticksLeft;
    private int beats;

    @BeforeEach
    void aQuietStart() {
        run(control, last, 20);
    }

    private void run(ControlStep step, ControlState from, int ticks) {
        ticksLeft = ticks;
        StateKeeper keeper = StateKeeper.of(site, law, "boot", 0, state -> {
            breakIf("saved state");
            kept = state.toText();
        });
        new ControlLoop(
                        site,
                        step,
                        board,
                        this::tick,
                        () -> {
                            breakIf("sensors");
                            return now.senses();
                        },
                        tick -> {
                            breakIf("forecast");
                            return Outlook.NONE;
                        },
                        set -> {
                            breakIf("relays");
                            commands.add(set);
                        },
                        (stepped, alerts) -> {
                            last = stepped.next();
                            coldestC = stepped.outcome().judgement().inside() instanceof Inside.Seen seen
                                    ? seen.coldestC()
                                    : Double.NaN;
                            breakIf("record");
                        },
                        keeper,
                        this::tell)
                .run(from);
    }

    private Optional<Tick> tick() {
        frames.jitter(0.01 * (beats++ % 2));
        now = frames.after(5);
        return ticksLeft-- > 0 ? Optional.of(now.tick()) : Optional.empty();
    }

    private void tell(Alert alert) {
        breakIf("courier");
        told.add(alert.kind() + " " + alert.subject() + " " + alert.change());
    }

    private void breakIf(String door) {
        if (door.equals(brokenDoor)) {
            throw new IllegalStateException("broken on purpose");
        }
    }

    private void restart(int ticks) {
        SavedState saved = SavedState.parse(kept);
        board = new AlertBoard(site);
        board.resume(saved.alerts(), saved.pulse().elapsedMs(), true);
        run(control, StateKeeper.restored(saved, site, law, control), ticks);
    }

    @Test
    void anAlertFromBeforeIsNotToldAgainAndIsClearedOnce() {
        frames.air(1, Reading.NO_ANSWER);
        run(control, last, 60);
        assertThat(told).containsExactly("SENSOR_LOST middle RAISED");
        told.clear();
        restart(60);
        assertThat(told).containsExactly("SERVICE_RESTARTED test-tunnel RAISED");
        told.clear();
        frames.air(1, Frames.value(8));
        run(control, last, 200);
        assertThat(told).containsExactly("SENSOR_LOST middle CLEARED");
    }

    @Test
    void everyDoorMayBreakAndIsToldOnceAndClearedOnce() {
        for (String door : List.of("sensors", "forecast", "relays", "record", "saved state")) {
            told.clear();
            brokenDoor = door;
            run(control, last, 15); // for the sensors less than it takes to doubt them
            brokenDoor = "";
            run(control, last, 150); // it must have been sound for ten minutes
            assertThat(told)
                    .filteredOn(line -> line.startsWith("DOOR_FAILED"))
                    .containsExactly("DOOR_FAILED " + door + " RAISED", "DOOR_FAILED " + door + " CLEARED");
        }
    }

    @Test
    void aCourierThatFailsStopsNothing() {
        brokenDoor = "courier";
        frames.air(1, Reading.NO_ANSWER);
        int before = commands.size();
        run(control, last, 60);
        assertThat(commands).hasSize(before + 60);
    }

    @Test
    void whatGoesWrongInControlItselfIsThrown() {
        ControlStep broken = new ControlStep() {
            @Override
            public ControlState start() {
                return control.start();
            }

            @Override
            public ControlStep at(Site other) {
                return this;
            }

            @Override
            public Stepped step(ControlState was, Frame frame, Outlook outlook) {
                throw new IllegalStateException("a bug");
            }
        };
        assertThatThrownBy(() -> run(broken, last, 1)).hasMessage("a bug");
    }

    @Test
    void nobodysTimeCountsAsRestWhereAClockIsNotTrusted() {
        SavedState saved = SavedState.parse(kept);
        long thenMs = saved.wall().epochMs();
        long hourMs = 3_600_000;
        long creditMs = saved.wall().trusted() ? hourMs : 0;
        assertThat(Restart.outageMs(saved, new WallTime(thenMs + hourMs, true))).isEqualTo(creditMs);
        assertThat(Restart.outageMs(saved, new WallTime(thenMs + hourMs, false)))
                .isZero();
        assertThat(Restart.outageMs(saved, new WallTime(thenMs - hourMs, true))).isZero();
    }

    @Test
    void aMachineThatFailedIsNotMendedByARestartNorByAPowerCut() {
        frames.inside(4.4);
        run(control, last, 30);
        assertThat(told).contains("HEAT_NOT_ARRIVING stage-1 RAISED");
        frames.power(0, Reading.NO_ANSWER); // no meter to tell
        frames.inside(7);
        run(control, last, 100);
        told.clear();
        restart(400);
        assertThat(last.watch().failures().failed().has(0)).isTrue();
        frames.after(1800);
        run(control, last, 400);
        assertThat(last.watch().failures().failed().has(0)).isTrue();
        assertThat(told).doesNotContain("HEAT_NOT_ARRIVING stage-1 CLEARED");
    }

    @Test
    void howMuchColderABenchUsuallyIsOutlivesARestart() {
        frames.inside(6).air(0, Frames.value(5));
        run(control, last, 48 * 720);
        frames.air(0, Reading.NO_ANSWER);
        restart(1);
        assertThat(coldestC).as("without the habit it would be 5.8 °C").isBetween(4.8, 5.1);
    }
}
