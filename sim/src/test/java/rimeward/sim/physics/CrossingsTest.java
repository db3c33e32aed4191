package rimeward.sim.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class CrossingsTest {

    @Test
    void aContactRemembersWhichWayItTurned() {
        Hysteresis contact = new Hysteresis(3, 5, 4);
        assertThat(contact.isHigh()).isFalse();
        assertThat(contact.crossing(4, 4.9)).isGreaterThan(1);
        assertThat(contact.crossing(4, 6)).isCloseTo(0.5, within(1e-12));
        contact.flip();
        assertThat(contact.crossing(6, 4)).isGreaterThan(1);
        assertThat(contact.crossing(4, 2)).isCloseTo(0.5, within(1e-12));
    }

    @Test
    void aContactAlreadyPastItsTurnTurnsAtOnce() {
        assertThat(new Hysteresis(3, 5, 4).crossing(7, 8)).isZero();
    }

    @Test
    void theFirstOfTwoWins() {
        Hysteresis late = new Hysteresis(0, 9, 0);
        Hysteresis early = new Hysteresis(0, 2, 0);
        Crossings crossings = new Crossings();
        crossings.clear();
        crossings.offer(late, 0, 10);
        crossings.offer(early, 0, 10);
        assertThat(crossings.share()).isCloseTo(0.2, within(1e-12));
        crossings.flip();
        assertThat(early.isHigh()).isTrue();
        assertThat(late.isHigh()).isFalse();
    }

    @Test
    void noTurnLeavesTheStepWhole() {
        Crossings crossings = new Crossings();
        crossings.clear();
        crossings.offer(new Hysteresis(0, 9, 0), 0, 1);
        assertThat(crossings.isAny()).isFalse();
        assertThat(crossings.share()).isEqualTo(1);
    }

    @Test
    void aBentApproachIsFoundByTheSecondLook() {
        Hysteresis contact = new Hysteresis(0, 0.25, 0);
        Crossings crossings = new Crossings();
        crossings.clear();
        crossings.offer(contact, 0, 1); // the truth is x², which reaches 0.25 at 0.5
        double straight = crossings.share();
        crossings.refine();
        crossings.offer(contact, 0, straight * straight);
        assertThat(Math.abs(crossings.refinedShare() - 0.5)).isLessThan(Math.abs(straight - 0.5));
    }
}
