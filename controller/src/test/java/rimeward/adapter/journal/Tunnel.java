package rimeward.adapter.journal;

import java.util.ArrayList;
import java.util.List;
import rimeward.alert.Alert;
import rimeward.alert.AlertBoard;
import rimeward.core.ControlCycle;
import rimeward.core.ControlState;
import rimeward.core.Pulse;
import rimeward.core.Stepped;
import rimeward.core.decision.DutyLaw;
import rimeward.core.guard.GuardState;
import rimeward.core.outlook.Outlook;
import rimeward.core.reading.Frame;
import rimeward.core.reading.Reading;
import rimeward.core.reading.Signal;
import rimeward.core.reading.WallTime;
import rimeward.core.watch.Failures;
import rimeward.fixture.Frames;
import rimeward.fixture.Sites;
import rimeward.record.SavedState;
import rimeward.site.Site;

/** Real control on frames that wander about the floor band, so that relays switch, verdicts change and alerts come and go. */
final class Tunnel {
    static final Site SITE = Sites.metered();

    private final ControlCycle cycle = new ControlCycle(SITE, new DutyLaw());
    private final AlertBoard board = new AlertBoard(SITE);
    private final Frames frames = Frames.steady(6, 70);
    private ControlState state = cycle.start();
    private int tick;

    /** What one tick gave. */
    record Ticked(Stepped stepped, List<Alert> alerts) {}

    List<Ticked> ticks(int count) {
        List<Ticked> all = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            all.add(next());
        }
        return all;
    }

    Ticked next() {
        tick++;
        int phase = tick % 720; // an hour of 5 s
        double inside = 5.5 + (phase < 360 ? phase : 720 - phase) * -0.004;
        frames.inside(inside).jitter((tick % 7) * 0.01).outside(-3.0 - tick * 1e-4);
        frames.air(1, phase > 500 && phase < 600 ? Reading.NO_ANSWER : Frames.value(inside + 0.1));
        frames.tank(tick % 2000 > 1500 ? Signal.ON : Signal.OFF);
        Frame frame = frames.after(5);
        Stepped stepped = cycle.step(state, frame, new Outlook.Night(1, -4.25, 1.0 / 3, 30_000));
        state = stepped.next();
        return new Ticked(stepped, board.after(stepped.outcome()));
    }

    /** A state that carries a number. */
    static SavedState state(int number) {
        return new SavedState(
                "boot",
                new WallTime(number, true),
                Pulse.start(),
                SITE.machines().stream().map(machine -> machine.id()).toList(),
                GuardState.start(SITE),
                Failures.none(SITE.machines().size()),
                List.of(),
                "duty",
                "",
                number,
                0,
                List.of());
    }
}
