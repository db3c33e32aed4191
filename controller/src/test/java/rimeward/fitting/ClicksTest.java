package rimeward.fitting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import rimeward.fixture.Sites;
import rimeward.site.Circuit;
import rimeward.site.Drying;
import rimeward.site.Heater;
import rimeward.site.Machine;
import rimeward.site.RelaySet;
import rimeward.site.Role;
import rimeward.site.Site;
import rimeward.site.Venting;
import rimeward.site.Wiring;

class ClicksTest {
    /** stage-1 rests closed, stage-2 open. */
    private static final Site SITE = site(3000);

    private static final RelaySet STOP = RelaySet.of(0b01);

    private final SmallTunnel tunnel = new SmallTunnel(SITE, 10, 10);

    @Test
    void eachRelayIsMovedAloneForTwoSecondsAndMovedBackAndRestsForOne() {
        clicks(SITE).run(false);
        assertThat(tunnel.switched()).containsExactly(RelaySet.none(), STOP, RelaySet.of(0b11), STOP);
        assertThat(tunnel.nowS()).isEqualTo(6);
    }

    @Test
    void aSkippedOneStaysAndQEnds() {
        tunnel.types("s", "q");
        clicks(SITE).run(true);
        assertThat(tunnel.switched()).isEmpty();
        tunnel.types("s", "");
        clicks(SITE).run(true);
        assertThat(tunnel.switched()).containsExactly(RelaySet.of(0b11), STOP);
    }

    @Test
    void theNameAndTheWiringStandOnScreenBeforeAnythingMoves() {
        clicks(SITE).run(true); // nobody answers
        assertThat(tunnel.switched()).isEmpty();
        assertThat(tunnel.said().get(0))
                .contains("stage-1: heater stage, 1000 W")
                .contains("pinctrl-bcm2835 line 17 (GPIO17), pin 11 of the 40-pin header; closed while the line is low")
                .contains("it rests closed: for 2 s it opens");
    }

    @Test
    void aRelayThatRestsClosedMakesRoomWhereTheCircuitIsSmall() {
        clicks(site(1500)).run(false);
        assertThat(tunnel.switched()).containsExactly(RelaySet.none(), STOP, RelaySet.of(0b10), STOP);
    }

    @Test
    void aRelayThatFailsLeavesTheOthersInTheirStopState() {
        Clock broken = new Clock() {
            @Override
            public double nowS() {
                return 0;
            }

            @Override
            public void waitS(double seconds) {
                throw new IllegalStateException("torn off");
            }
        };
        try {
            new Clicks(SITE, tunnel, tunnel, broken).run(false);
        } catch (IllegalStateException e) {
            assertThat(e).hasMessage("torn off");
        }
        assertThat(tunnel.switched()).containsExactly(RelaySet.none(), STOP);
    }

    @Test
    void guardedRelaysOpenBeforeTheyCloseAndObeyNobodyAfterTheEnd() {
        GuardedRelays relays = new GuardedRelays(SITE, tunnel, () -> tunnel.close(STOP));
        relays.close(RelaySet.of(0b10));
        assertThat(tunnel.switched()).containsExactly(RelaySet.none(), RelaySet.of(0b10));
        relays.close(); // as a Ctrl-C does, in the middle of a click
        relays.close(RelaySet.of(0b11));
        relays.close();
        assertThat(tunnel.closed()).isEqualTo(STOP);
        assertThat(tunnel.switched()).hasSize(3);
    }

    @Test
    void everyLineOfTheHeaderHasAPinOfItsOwn() {
        assertThat(java.util.stream.IntStream.rangeClosed(0, 27).mapToObj(Header40::pin))
                .doesNotHaveDuplicates()
                .allSatisfy(pin -> assertThat(pin).matches("pin \\d+ of the 40-pin header"));
        // none of the header's supply and ground pins
        for (int other : new int[] {1, 2, 4, 6, 9, 14, 17, 20, 25, 30, 34, 39}) {
            assertThat(java.util.stream.IntStream.rangeClosed(0, 27).mapToObj(Header40::pin))
                    .noneMatch(pin -> pin.startsWith("pin " + other + " "));
        }
        assertThat(Header40.pin(40)).isEqualTo("not on the 40-pin header");
    }

    private Clicks clicks(Site site) {
        return new Clicks(site, tunnel, tunnel, tunnel);
    }

    private static Site site(double limitW) {
        return Sites.of(
                new Heater(List.of(stage("stage-1", 17, true), stage("stage-2", 27, false)), 120),
                new Drying.NoDryer(),
                new Venting.NoVentFan(),
                new Circuit(230, limitW / 230, 1, 0, 10));
    }

    private static Machine stage(String id, int line, boolean closedAtStop) {
        Wiring wiring = new Wiring.GpioLine("pinctrl-bcm2835", line, closedAtStop, closedAtStop, closedAtStop);
        return new Machine(id, Role.HEATER_STAGE, 1000, 60, 60, 12, false, wiring);
    }
}
