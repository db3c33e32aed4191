package rimeward.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.zip.CRC32;
import org.junit.jupiter.api.Test;
import rimeward.alert.AlertKind;
import rimeward.alert.AlertSlot;
import rimeward.core.Pulse;
import rimeward.core.guard.GuardState;
import rimeward.core.guard.MachineClock;
import rimeward.core.guard.StandDowns;
import rimeward.core.judgement.BenchHabit;
import rimeward.core.order.FloorOrder;
import rimeward.core.order.HandedForecast;
import rimeward.core.order.KnownTunnel;
import rimeward.core.order.Standing;
import rimeward.core.outlook.Outlook;
import rimeward.core.reading.WallTime;
import rimeward.core.watch.Failures;
import rimeward.site.RelaySet;

class SavedStateTest {
    private static final SavedState STATE = new SavedState(
            "6f1c",
            new WallTime(1_390_823_456_789L, true),
            new Pulse(86_400_005L, 5.001),
            List.of("stage-1", "dryer"),
            new GuardState(
                    RelaySet.of(2),
                    List.of(new MachineClock(0.1 + 0.2, 3600), new MachineClock(12, 12)),
                    true,
                    false,
                    true,
                    1799.995,
                    1.0 / 3,
                    0,
                    StandDowns.NONE.with(1, 1234.5, 2)),
            new Failures(RelaySet.of(1), List.of(1234.5, 0.0), true, 60.25),
            List.of(new BenchHabit("north-bench", -0.1 - 0.2)),
            "duty",
            "1 true 5.0",
            -6.283185307179586,
            125.5,
            List.of(
                    new AlertSlot(AlertKind.FLOOR_CROSSED, "hallin-rigg", true, 0, 1_390_823_400L, true, 35.5, 0),
                    new AlertSlot(AlertKind.SENSOR_DOUBTED, "middle", false, 115, 0, false, 0, 7.25)),
            new Standing(
                    new FloorOrder.Asked(6.5, 1234567890L),
                    new HandedForecast.Night(new Outlook.Night(3, -6.25, 1.0 / 3, 30_000), 86_400_000L),
                    new KnownTunnel.Learned(203.25, 61_000.5, 2.1e6, 310, 13, 77)));

    @Test
    void comesBackToTheLastBit() {
        assertThat(SavedState.parse(STATE.toText())).isEqualTo(STATE);
    }

    @Test
    void comesBackWhereThereIsNothingToSay() {
        SavedState bare = new SavedState(
                "",
                new WallTime(0, false),
                Pulse.start(),
                STATE.machines(),
                STATE.guard(),
                Failures.none(2),
                List.of(),
                "by-hand",
                "",
                0,
                0,
                List.of());
        assertThat(SavedState.parse(bare.toText())).isEqualTo(bare);
    }

    @Test
    void everyCutAndEveryFlippedCharacterIsNoticed() {
        String text = STATE.toText();
        for (int i = 0; i < text.length(); i++) {
            String cut = text.substring(0, i);
            assertThatThrownBy(() -> SavedState.parse(cut)).isInstanceOf(DamagedState.class);
            String flipped = cut + (char) (text.charAt(i) ^ 1) + text.substring(i + 1);
            assertThatThrownBy(() -> SavedState.parse(flipped)).isInstanceOf(DamagedState.class);
        }
    }

    @Test
    void damageIsNamed() {
        assertThatThrownBy(() -> SavedState.parse(""))
                .hasMessage("The saved state cannot be used: its end is missing.");
        assertThatThrownBy(() -> SavedState.parse(STATE.toText().replace("stage-1", "stage-2")))
                .hasMessage("The saved state cannot be used: its checksum does not fit.");
    }

    @Test
    void whatAnOlderProgramSavedIsStillRead() {
        SavedState before = new SavedState(
                STATE.boot(),
                STATE.wall(),
                STATE.pulse(),
                STATE.machines(),
                STATE.guard(),
                Failures.none(2),
                List.of(),
                STATE.law(),
                STATE.lawMemory(),
                STATE.assumedOutsideC(),
                STATE.lastOutageS(),
                STATE.alerts());
        String text = before.toText();
        String body = "rimeward-state 1" + text.substring(text.indexOf('\n'), text.lastIndexOf("sum "));
        CRC32 crc = new CRC32();
        crc.update(body.getBytes(StandardCharsets.UTF_8));
        assertThat(SavedState.parse(body + "sum " + Long.toHexString(crc.getValue()) + "\n"))
                .isEqualTo(before);
    }
}
