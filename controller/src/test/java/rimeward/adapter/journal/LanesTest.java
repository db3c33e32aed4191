package rimeward.adapter.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import rimeward.record.FrameRow;

/** What waits for a disk that is slow or gone. */
class LanesTest {
    private static final JournalLimits FOUR = new JournalLimits(600_000, 4, 30, 400, 300_000, 800, 100_000);

    private final Lanes lanes = new Lanes(FOUR);
    private final Tunnel tunnel = new Tunnel();

    private FrameRow add(boolean change) {
        FrameRow row = FrameRow.of(tunnel.next().stepped().outcome(), change);
        lanes.add(new Lanes.History(row, List.of(), List.of()));
        return row;
    }

    private Lanes.Work taken() throws InterruptedException {
        lanes.keep("a state, so that there is work");
        return lanes.next();
    }

    private static List<FrameRow> rows(Lanes.Work work) {
        return work.history().stream().map(Lanes.History::row).toList();
    }

    @Test
    void aFullLaneLeavesOutTheMinuteThatComesAndMakesRoomForTheChangeThatComes() throws InterruptedException {
        FrameRow change = add(true);
        FrameRow minute = add(false);
        FrameRow second = add(true);
        FrameRow third = add(true);
        add(false); // no room
        FrameRow last = add(true); // instead of the minute
        Lanes.Work work = taken();
        assertThat(rows(work)).containsExactly(change, second, third, last).doesNotContain(minute);
        assertThat(work.dropped()).isEqualTo(2);
        assertThat(taken().dropped()).as("told once").isZero();
    }

    @Test
    void withNothingButChangesTheOldestGoes() throws InterruptedException {
        FrameRow oldest = add(true);
        List<FrameRow> others = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            others.add(add(true));
        }
        assertThat(rows(taken())).isEqualTo(others).doesNotContain(oldest);
    }

    @Test
    void alertsAllWaitAndOfStatesTheNewest() throws InterruptedException {
        List<Object> told = new ArrayList<>();
        for (int i = 0; i < 2000; i++) {
            Tunnel.Ticked ticked = tunnel.next();
            if (!ticked.alerts().isEmpty()) {
                lanes.tell(ticked.alerts());
                told.addAll(ticked.alerts());
            }
            lanes.keep("state " + i);
        }
        Lanes.Work work = lanes.next();
        assertThat(told).hasSizeGreaterThan(FOUR.waitingRows());
        assertThat(work.alerts()).hasSameSizeAs(told);
        assertThat(work.state()).contains("state 1999");
    }
}
