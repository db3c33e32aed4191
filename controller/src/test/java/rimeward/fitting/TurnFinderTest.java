package rimeward.fitting;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import rimeward.core.reading.Reading;

class TurnFinderTest {
    @Test
    void theStateItIsFirstMetInIsNoSwitching() {
        TurnFinder finder = new TurnByPower(1000);
        assertThat(finder.look(0, 5, new Reading.Value(980, 0))).isEmpty();
        assertThat(finder.look(1, 6, new Reading.Value(20, 0))).contains(new Turn(false, 1, 6));
        assertThat(finder.look(2, 4, new Reading.Value(990, 0))).contains(new Turn(true, 2, 4));
    }

    @Test
    void aFanThatRunsOnIsNeitherOnNorOff() {
        TurnFinder finder = new TurnByPower(1000);
        assertThat(finder.look(0, 5, new Reading.Value(980, 0))).isEmpty();
        assertThat(finder.look(1, 6, new Reading.Value(200, 0))).isEmpty();
        assertThat(finder.look(2, 7, new Reading.Value(980, 0))).isEmpty();
    }

    @Test
    void whatSwitchedUnseenIsNotPlaced() {
        TurnFinder finder = new TurnByPower(1000);
        assertThat(finder.look(0, 5, new Reading.Value(980, 0))).isEmpty();
        assertThat(finder.look(1, 6, Reading.NO_ANSWER)).isEmpty();
        assertThat(finder.look(2, 7, new Reading.Value(0, 0))).isEmpty();
    }

    @Test
    void noiseIsNoTurningPoint() {
        TurnFinder finder = new TurnByAir();
        for (int i = 0; i < 200; i++) {
            assertThat(finder.look(i, 8 + 0.14 * (i % 3 - 1), Reading.NOT_FITTED))
                    .isEmpty();
        }
    }

    @Test
    void theExtremeItselfIsTold() {
        TurnFinder finder = new TurnByAir();
        assertThat(finder.look(0, 8, Reading.NOT_FITTED)).isEmpty();
        assertThat(finder.look(1, 9, Reading.NOT_FITTED)).isEmpty();
        assertThat(finder.look(2, 9.2, Reading.NOT_FITTED)).isEmpty();
        assertThat(finder.look(3, 8.8, Reading.NOT_FITTED)).contains(new Turn(false, 2, 9.2));
        assertThat(finder.look(4, 8.1, Reading.NOT_FITTED)).isEmpty();
        assertThat(finder.look(5, 8.5, Reading.NOT_FITTED)).contains(new Turn(true, 4, 8.1));
    }
}
