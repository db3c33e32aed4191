package rimeward.adapter.pi;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.pi4j.context.Context;
import com.pi4j.context.ContextBuilder;
import com.pi4j.io.gpio.digital.DigitalOutput;
import com.pi4j.plugin.mock.provider.gpio.digital.MockDigitalOutputProvider;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
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

class PiRelaysTest {
    private static final String CHIP = "pinctrl-bcm2835";
    private static final Site SITE = site(CHIP);

    @TempDir
    Path root;

    private final List<String> seen = new ArrayList<>();
    private boolean broken;
    private boolean buggy;
    private String held = "";

    @Test
    void theFirstLevelIsTheStartLevelSoThatNothingClicks() {
        new PiRelays(SITE, Fake::new);
        // active-low and open at start: high; active-high and open: low
        assertThat(seen).containsExactly("take low true", "take high false");
    }

    @Test
    void closesAndLeavesEachAtItsStopLevel() {
        PiRelays relays = new PiRelays(SITE, Fake::new);
        seen.clear();
        relays.close(RelaySet.of(0b11));
        assertThat(seen).containsExactly("low false", "high true");
        seen.clear();
        relays.close();
        assertThat(seen).as("stage low closed, stage high open").containsExactly("low false", "high false", "let go");
    }

    @Test
    void aKilledServicesLinesGoStraightToTheirStopLevel() {
        PiRelays.release(SITE, Fake::new);
        assertThat(seen)
                .startsWith("take low false", "take high false")
                .endsWith("let go")
                .doesNotContain("low true", "high true");
    }

    @Test
    void aLineThatFailsNeverThrowsIntoTheLoopAndTheOthersAreDriven() {
        PiRelays relays = new PiRelays(SITE, Fake::new);
        seen.clear();
        broken = true;
        assertThatCode(() -> relays.close(RelaySet.of(0b11))).doesNotThrowAnyException();
        assertThat(seen).containsExactly("high true");
        assertThat(relays.isFailing()).isTrue();
        broken = false;
        relays.close(RelaySet.of(0b11));
        assertThat(seen).endsWith("low false", "high true");
        assertThat(relays.isFailing()).isFalse();
    }

    @Test
    void aLineThatAnotherProgramHoldsIsAskedForAgainWhileTheOthersWork() {
        held = "low";
        PiRelays relays = new PiRelays(SITE, Fake::new);
        assertThat(relays.isFailing()).isTrue();
        relays.close(RelaySet.of(0b11));
        assertThat(seen).containsExactly("take high false", "high true");
        held = "";
        for (int beat = 0; beat < 12; beat++) {
            relays.close(RelaySet.of(0b11));
        }
        assertThat(relays.isFailing()).isFalse();
        assertThat(seen).as("taken closed, as it is wanted by now: no click").contains("take low false");
    }

    @Test
    void lettingGoNamesEachLineThatWasNotToBeHad() {
        held = "low";
        assertThatThrownBy(() -> PiRelays.release(SITE, Fake::new))
                .isInstanceOf(LinesRefused.class)
                .hasMessage("low is held");
        assertThat(seen).contains("take high false", "let go");
    }

    @Test
    void lettingGoNamesALineThatDoesNotObey() {
        broken = true;
        assertThatThrownBy(() -> PiRelays.release(SITE, Fake::new))
                .isInstanceOf(LinesRefused.class)
                .hasMessageContaining("line 5 of pinctrl-bcm2835 (relay of low)");
        assertThat(seen).contains("high false").endsWith("let go");
    }

    @Test
    void aBugBelowOneLineDoesNotKeepTheOthersFromBeingDriven() {
        PiRelays relays = new PiRelays(SITE, Fake::new);
        seen.clear();
        buggy = true;
        assertThatCode(() -> relays.close(RelaySet.of(0b11))).doesNotThrowAnyException();
        assertThat(seen).containsExactly("high true");
    }

    @Test
    void aRefusalSaysWhoMayHoldTheLineAndWhatToDo() {
        Pi4jLines lines = Pi4jLines.with(mock(), "mock-digital-output", root);
        Wiring.GpioLine at = new Wiring.GpioLine(CHIP, 5, true, false, true);
        lines.take("low", at, true);
        assertThatThrownBy(() -> lines.take("low", at, true)) // Pi4J gives out no name twice
                .isInstanceOf(LinesRefused.class)
                .hasMessageContaining("line 5 of pinctrl-bcm2835 (relay of low) cannot be taken")
                .hasMessageContaining("another program may hold it (the service? systemctl stop rimeward)");
    }

    @Test
    void throughPi4j() {
        Context context = mock();
        PiRelays relays = new PiRelays(SITE, () -> Pi4jLines.with(context, "mock-digital-output", root));
        DigitalOutput low = context.registry().get("low");
        DigitalOutput high = context.registry().get("high");
        assertThat(low.isHigh()).isTrue();
        assertThat(high.isLow()).isTrue();
        relays.close(RelaySet.of(0b11));
        assertThat(low.isLow()).isTrue();
        assertThat(high.isHigh()).isTrue();
        relays.close();
        assertThat(low.isLow()).isTrue();
        assertThat(high.isLow()).isTrue();
    }

    @Test
    void theMockIsNeverTakenForARelay() {
        // it lies on this class path with the highest priority; this machine is no Pi, so the real lines must be
        // refused, not mocked
        assertThatThrownBy(() -> PiRelays.release(SITE, root))
                .isInstanceOf(LinesRefused.class)
                .hasMessageContaining("Raspberry Pi");
        assertThat(PiRelays.of(SITE, root).isFailing()).isTrue();
    }

    @Test
    void aChipIsKnownByItsLabel() {
        assertThatThrownBy(() ->
                        PiRelays.release(site("gpio-sim"), () -> Pi4jLines.with(mock(), "mock-digital-output", root)))
                .isInstanceOf(LinesRefused.class)
                .hasMessageContaining("gpio-sim");
        new Sysfs(root).put("sys/class/gpio/gpiochip512/label", "pinctrl-rp1\n");
        assertThatThrownBy(() -> PiRelays.release(SITE, () -> Pi4jLines.with(mock(), "mock-digital-output", root)))
                .isInstanceOf(LinesRefused.class)
                .hasMessageContaining("pinctrl-rp1");
    }

    private static Context mock() {
        return ContextBuilder.newInstance()
                .noAutoDetect()
                .add(MockDigitalOutputProvider.newInstance())
                .build();
    }

    private static Site site(String chip) {
        Machine low = stage("low", new Wiring.GpioLine(chip, 5, true, false, true));
        Machine high = stage("high", new Wiring.GpioLine(chip, 17, false, false, false));
        return Sites.of(
                new Heater(List.of(low, high), 120),
                new Drying.NoDryer(),
                new Venting.NoVentFan(),
                new Circuit(230, 13, 1, 0, 10));
    }

    private static Machine stage(String id, Wiring wiring) {
        return new Machine(id, Role.HEATER_STAGE, 1000, 60, 60, 12, false, wiring);
    }

    /** Writes down what is done to the lines; the line "low" can be broken. */
    private final class Fake implements LineTaker {
        @Override
        public RelayLine take(String machine, Wiring.GpioLine at, boolean high) {
            if (machine.equals(held)) {
                throw new LinesRefused(machine + " is held");
            }
            seen.add("take " + machine + " " + high);
            return new FakeLine(machine);
        }

        @Override
        public void close() {
            seen.add("let go");
        }
    }

    private final class FakeLine implements RelayLine {
        private final String machine;
        private boolean high;

        FakeLine(String machine) {
            this.machine = machine;
        }

        @Override
        public void drive(boolean toHigh) {
            if (broken && machine.equals("low")) {
                throw new LineFailed("EIO", new IllegalStateException());
            }
            if (buggy && machine.equals("low")) {
                throw new IllegalStateException("a bug");
            }
            high = toHigh;
            seen.add(machine + " " + toHigh);
        }

        @Override
        public boolean isHigh() {
            return high;
        }
    }
}
