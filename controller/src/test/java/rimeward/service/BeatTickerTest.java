package rimeward.service;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import rimeward.core.reading.Tick;

class BeatTickerTest {
    private final FakeTime time = new FakeTime();
    private int cyclesDone;
    private final BeatTicker ticker = new BeatTicker(time, 0, () -> cyclesDone++);

    private Tick next() {
        return ticker.next().orElseThrow();
    }

    @Test
    void workThatTakesTimeMovesNoBeat() {
        for (int i = 0; i < 1000; i++) {
            assertThat(next().elapsedMs()).isEqualTo(5000L * i);
            time.pass(1.7);
        }
    }

    @Test
    void aStallIsFollowedByOneTickAndThenTheOldGrid() {
        next();
        time.pass(23);
        assertThat(next().elapsedMs()).isEqualTo(23_000);
        assertThat(ticker.isLate()).isTrue();
        assertThat(next().elapsedMs()).isEqualTo(25_000);
        assertThat(ticker.isLate()).isFalse();
    }

    @Test
    void onlyAFinishedCycleCounts() {
        next();
        assertThat(cyclesDone).isZero();
        next();
        assertThat(cyclesDone).isEqualTo(1);
    }

    @Test
    void aStopEndsIt() {
        next();
        ticker.stop();
        assertThat(ticker.next()).isEmpty();
    }

    @Test
    void countsOnFromBeforeARestart() {
        assertThat(new BeatTicker(time, 86_400_000, () -> {})
                        .next()
                        .orElseThrow()
                        .elapsedMs())
                .isEqualTo(86_400_000);
    }

    @Test
    void aClockSetBackByADayMovesNoBeatAndIsBelievedAgainOnceItIsRight() {
        next();
        time.setWall(-86_400);
        Tick jumped = next();
        assertThat(jumped.elapsedMs()).isEqualTo(5000);
        assertThat(jumped.wall().trusted()).isFalse();
        assertThat(ticker.hasWallJumped()).isTrue();
        time.setWall(86_400);
        assertThat(next().wall().trusted()).isTrue();
        assertThat(ticker.hasWallJumped()).isFalse();
    }

    @Test
    void aClockThatStaysJumpedIsBelievedAfterAnHour() {
        next();
        time.setWall(86_400);
        int ticks = 0;
        do {
            next();
            ticks++;
        } while (ticker.hasWallJumped());
        assertThat(ticks).isEqualTo(1 + 720);
    }

    @Test
    void theNetworkSettingTheClockAfterAStartIsNoJump() {
        time.setByNetwork(false);
        assertThat(next().wall().trusted()).isFalse();
        time.setWall(400_000);
        time.setByNetwork(true);
        assertThat(next().wall().trusted()).isTrue();
        assertThat(ticker.hasWallJumped()).isFalse();
    }
}
