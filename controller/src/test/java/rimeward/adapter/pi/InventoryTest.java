package rimeward.adapter.pi;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rimeward.site.Attached;

class InventoryTest {
    private static final Attached NONE = new Attached.NotAttached();

    @TempDir
    private Path root;

    private final FakeBus bus = new FakeBus();
    private long nowNs;

    @Test
    void anEmptyMachineHasNothing() {
        assertThat(found()).isEmpty();
    }

    @Test
    void chipsBusesAndTheKernelsOwnSensors() {
        new Sysfs(root)
                .put("sys/class/gpio/gpiochip512/label", "pinctrl-bcm2835\n")
                .put("sys/class/gpio/gpiochip512/ngpio", "54\n")
                .put("sys/bus/w1/devices/w1_bus_master1/w1_master_name", "w1_bus_master1\n")
                .put("sys/bus/w1/devices/28-0123456789ab/w1_slave", "")
                .put("sys/bus/w1/devices/10-0123456789ab/w1_slave", "")
                .put("sys/bus/i2c/devices/1-0044/name", "sht3x\n")
                .put("sys/bus/i2c/devices/1-0044/hwmon/hwmon3/name", "sht3x\n")
                .put("sys/bus/iio/devices/iio:device0/name", "bme280\n")
                .put("sys/class/hwmon/hwmon1/in0_lcrit_alarm", "1\n");
        assertThat(found())
                .containsExactly(
                        new Found(Found.Kind.GPIO_CHIP, "pinctrl-bcm2835", "54 lines", NONE),
                        new Found(Found.Kind.ONE_WIRE, "10-0123456789ab", "no DS18B20", NONE),
                        new Found(
                                Found.Kind.ONE_WIRE,
                                "28-0123456789ab",
                                "DS18B20",
                                new Attached.OneWire("28-0123456789ab")),
                        new Found(Found.Kind.HWMON, "bus 1, 0x44", "sht3x", new Attached.Hwmon(1, 0x44)),
                        new Found(
                                Found.Kind.HWMON,
                                "supply",
                                "the Pi's 5 V have been too low: a stronger supply, a shorter cable",
                                NONE),
                        new Found(Found.Kind.IIO, "bme280", "iio:device0", new Attached.Iio("bme280")));
    }

    @Test
    void chipsOnABusAreToldApartByWhatChangesNothingInThem() {
        new Sysfs(root).put("dev/i2c-1", "");
        bus.answer(0x44, "89", ShtProbeTest.answer(0x1234, 0x5678)); // SHT4x, its serial number
        bus.answer(0x45, "f32d", status(0x8010)); // SHT3x, its status
        bus.answer(0x20, "", new byte[] {0});
        assertThat(found())
                .containsExactly(
                        new Found(Found.Kind.I2C, "bus 1, 0x20", "answers", NONE),
                        new Found(
                                Found.Kind.I2C, "bus 1, 0x44", "SHT4x", new Attached.I2c(Attached.Chip.SHT4X, 1, 0x44)),
                        new Found(
                                Found.Kind.I2C,
                                "bus 1, 0x45",
                                "SHT3x",
                                new Attached.I2c(Attached.Chip.SHT3X, 1, 0x45)));
        assertThat(bus.asked)
                .as("no measuring, no heating: 24 is an SHT4x's heater")
                .doesNotContain("44 2400", "45 2400");
        assertThat(bus.closed).isTrue();
    }

    @Test
    void anAddressThatTheKernelDrivesIsNotAsked() {
        new Sysfs(root)
                .put("dev/i2c-1", "")
                .put("sys/bus/i2c/devices/1-0044/name", "sht4x")
                .put("sys/bus/i2c/devices/1-0044/driver/bind", "");
        assertThat(found())
                .containsExactly(new Found(Found.Kind.I2C, "bus 1, 0x44", "sht4x, driven by the kernel", NONE));
        assertThat(bus.asked).noneMatch(question -> question.startsWith("44 ")).anyMatch(q -> q.startsWith("45 "));
    }

    @Test
    void aBusThatIsHeldLowIsGivenUp() {
        new Sysfs(root).put("dev/i2c-1", "");
        bus.secondsAQuestion = 1;
        assertThat(found())
                .singleElement()
                .satisfies(trouble ->
                        assertThat(trouble.what()).contains("given up").contains("held low"));
        assertThat(bus.asked).hasSizeLessThan(20);
    }

    private List<Found> found() {
        return Inventory.of(root, number -> bus, () -> nowNs);
    }

    private static byte[] status(int word) {
        byte[] answer = {(byte) (word >> 8), (byte) word, 0};
        answer[2] = (byte) Crc8.of(answer, 0, 2);
        return answer;
    }

    /** Answers what it was told to, nobody else is there. */
    private final class FakeBus implements I2cBus {
        private final Map<String, byte[]> answers = new HashMap<>();
        private final List<String> asked = new ArrayList<>();
        private boolean closed;
        private int secondsAQuestion;

        void answer(int address, String question, byte[] bytes) {
            answers.put(Integer.toHexString(address) + " " + question, bytes);
        }

        @Override
        public byte[] ask(int address, byte[] command, int waitMs, int length) throws IOException {
            StringBuilder question = new StringBuilder(Integer.toHexString(address)).append(' ');
            for (byte each : command) {
                question.append(Integer.toHexString(each & 0xFF));
            }
            asked.add(question.toString());
            nowNs += secondsAQuestion * 1_000_000_000L;
            byte[] bytes = answers.get(question.toString());
            if (bytes == null) {
                throw new IOException("no acknowledge");
            }
            return bytes;
        }

        @Override
        public void close() {
            closed = true;
        }
    }
}
