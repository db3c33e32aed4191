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
import rimeward.core.tunnel.LossChange;
import rimeward.core.tunnel.LossStanding;
import rimeward.fixture.Frames;
import rimeward.fixture.Sites;
import rimeward.site.Site;

class LossNewsTest {
    private static final long TUESDAY_EPOCH_S = 1_386_093_600; // 2013-12-03T18:00Z
    private static final LossStanding MORE = more(TUESDAY_EPOCH_S);
    private static final LossStanding LESS = new LossStanding.Changed(new LossChange(TUESDAY_EPOCH_S, -15, -22, -8));

    private final Site site = Sites.metered();
    private final ControlCycle cycle = new ControlCycle(site, new DutyLaw());
    private final Frames frames = Frames.steady(8, 60);
    private LossStanding standing = LossStanding.UNKNOWN;
    private AlertBoard board = new AlertBoard(site, () -> standing);
    private ControlState state = cycle.start();

    private static LossStanding more(long sinceEpochS) {
        return new LossStanding.Changed(new LossChange(sinceEpochS, 18, 10, 27));
    }

    private List<String> day(LossStanding now) {
        standing = now;
        List<Alert> all = new ArrayList<>();
        for (int i = 0; i < 17_280; i++) {
            frames.jitter(0.01 * (i % 2));
            Stepped stepped = cycle.step(state, frames.after(5), Outlook.NONE);
            state = stepped.next();
            all.addAll(board.after(stepped.outcome()));
        }
        return all.stream().map(alert -> alert.kind() + " " + alert.change()).toList();
    }

    @Test
    void isToldOnceAndClearedOnce() {
        assertThat(day(LossStanding.UNKNOWN)).isEmpty();
        assertThat(day(new LossStanding.Usual())).isEmpty();
        assertThat(day(MORE)).containsExactly("HEAT_LOSS_ROSE RAISED");
        assertThat(day(MORE)).isEmpty();
        assertThat(day(new LossStanding.Usual())).containsExactly("HEAT_LOSS_ROSE CLEARED");
        assertThat(day(LESS)).containsExactly("HEAT_LOSS_FELL RAISED");
    }

    @Test
    void aRestartDoesNotTellItAgain() {
        day(MORE);
        AlertBoard after = new AlertBoard(site, () -> standing);
        after.resume(board.saved(), 86_400_000, true);
        board = after;
        assertThat(day(LossStanding.UNKNOWN)).containsExactly("SERVICE_RESTARTED RAISED", "SERVICE_RESTARTED CLEARED");
        assertThat(day(MORE)).isEmpty();
    }

    @Test
    void aFurtherChangeIsToldAnew() {
        day(MORE);
        assertThat(day(more(TUESDAY_EPOCH_S + 10 * 86_400)))
                .containsExactly("HEAT_LOSS_ROSE CLEARED", "HEAT_LOSS_ROSE RAISED");
    }

    @Test
    void fromMoreToLess() {
        day(MORE);
        assertThat(day(LESS)).containsExactlyInAnyOrder("HEAT_LOSS_ROSE CLEARED", "HEAT_LOSS_FELL RAISED");
    }
}
