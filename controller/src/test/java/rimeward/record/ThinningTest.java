package rimeward.record;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import rimeward.core.ControlCycle;
import rimeward.core.ControlState;
import rimeward.core.Outcome;
import rimeward.core.Stepped;
import rimeward.core.decision.DutyLaw;
import rimeward.core.outlook.Outlook;
import rimeward.core.reading.Reading;
import rimeward.core.reading.Signal;
import rimeward.fixture.Frames;
import rimeward.fixture.Sites;

class ThinningTest {
    private final ControlCycle cycle = new ControlCycle(Sites.metered(), new DutyLaw());
    private final Frames frames = Frames.steady(9, 60);
    private final Thinning thinning = new Thinning();
    private ControlState state = cycle.start();
    private int beats;

    private Keeping next(boolean told) {
        Stepped stepped = cycle.step(state, frames.jitter(0.01 * (beats++ % 2)).after(5), Outlook.NONE);
        state = stepped.next();
        Outcome outcome = stepped.outcome();
        return thinning.look(outcome, told);
    }

    private void quiet() {
        assertThat(next(false)).isEqualTo(Keeping.CHANGE); // the very first
        assertThat(next(false)).isEqualTo(Keeping.DROPPED);
    }

    @Test
    void aQuietHourIsOneRowAMinute() {
        quiet();
        int minutes = 0;
        for (int i = 0; i < 720; i++) {
            Keeping kept = next(false);
            assertThat(kept).isNotEqualTo(Keeping.CHANGE);
            minutes += kept == Keeping.MINUTE ? 1 : 0;
        }
        assertThat(minutes).isEqualTo(60);
    }

    @Test
    void whateverChangesIsKeptAtOnceAndOnce() {
        quiet();
        frames.inside(4.2);
        assertThat(next(false)).as("a relay").isEqualTo(Keeping.CHANGE);
        frames.tank(Signal.ON);
        assertThat(next(false)).as("the tank").isEqualTo(Keeping.CHANGE);
        assertThat(next(false)).isEqualTo(Keeping.DROPPED);
        frames.door(Signal.ON);
        assertThat(next(false)).as("the door").isEqualTo(Keeping.CHANGE);
        frames.air(1, Reading.NO_ANSWER);
        assertThat(next(false)).as("a sensor").isEqualTo(Keeping.CHANGE);
        assertThat(next(true)).as("an alert").isEqualTo(Keeping.CHANGE);
    }
}
