package rimeward.adapter.pi;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rimeward.core.reading.Loss;
import rimeward.core.reading.Reading;
import rimeward.core.reading.Signal;
import rimeward.fixture.Sites;
import rimeward.site.Attached;
import rimeward.site.Sensor;
import rimeward.site.Site;

class PiSensorsTest {
    private static final String CHIP = "sys/bus/i2c/devices/1-0044/hwmon/hwmon0/";

    @TempDir
    Path root;

    private long nowNs = 5_000_000_000L;

    @Test
    void anUnpluggedSensorGrowsOldIsLostAndComesBack() {
        Sysfs sysfs = new Sysfs(root).put(CHIP + "temp1_input", "4000").put(CHIP + "humidity1_input", "80000");
        PiSensors sensors = sensors(new Attached.Hwmon(1, 0x44));
        sensors.readOnce();
        passS(3);
        assertThat(air(sensors, 0)).isEqualTo(new Reading.Value(4, 3));
        sysfs.remove(CHIP + "temp1_input");
        sensors.readOnce();
        passS(Cell.GRACE_S - 3);
        assertThat(air(sensors, 0)).isEqualTo(new Reading.Value(4, Cell.GRACE_S));
        passS(1);
        assertThat(air(sensors, 0)).isEqualTo(new Reading.Lost(Loss.NO_ANSWER));
        sysfs.put(CHIP + "temp1_input", "5000");
        sensors.readOnce();
        assertThat(air(sensors, 0)).isEqualTo(new Reading.Value(5, 0));
    }

    @Test
    void whatIsAbsentIsLostFromTheStart() {
        PiSensors sensors = sensors(new Attached.Hwmon(1, 0x44), new Attached.Iio("bme280"));
        sensors.readOnce();
        assertThat(air(sensors, 0)).isEqualTo(Reading.NO_ANSWER);
        assertThat(air(sensors, 1)).isEqualTo(Reading.NO_ANSWER);
        assertThat(air(sensors, 2)).as("nothing attached").isEqualTo(Reading.NO_ANSWER);
    }

    @Test
    void aBusThatIsClosedToUsIsLostAndReadOnceItOpens() {
        boolean[] closed = {true};
        I2cBus bus = (address, command, waitMs, length) -> {
            if (closed[0]) {
                throw new IOException("/dev/i2c-1: Permission denied");
            }
            return ShtProbeTest.answer(0x6666, 0x6666);
        };
        Site site = site(new Attached.I2c(Attached.Chip.SHT4X, 1, 0x44));
        PiSensors sensors = new PiSensors(site, root, () -> nowNs, number -> bus, new FakeLines());
        sensors.readOnce();
        assertThat(air(sensors, 0)).isEqualTo(Reading.NO_ANSWER);
        closed[0] = false;
        sensors.readOnce();
        assertThat(air(sensors, 0)).isInstanceOf(Reading.Value.class);
    }

    @Test
    void theReasonOfTheLastTryIsTold() {
        new Sysfs(root)
                .put(CHIP + "name", "sht3x")
                .put(CHIP + "temp1_input", "-121")
                .put(CHIP + "humidity1_input", "-121");
        PiSensors sensors = sensors(new Attached.Hwmon(1, 0x44));
        sensors.readOnce();
        assertThat(air(sensors, 0)).isEqualTo(new Reading.Lost(Loss.FAULT_VALUE));
    }

    @Test
    void aSensorThatHangsHoldsUpNeitherTheTickNorAnotherBus() {
        new Sysfs(root).put(CHIP + "temp1_input", "4000").put(CHIP + "humidity1_input", "80000");
        CountDownLatch never = new CountDownLatch(1);
        I2cBus hanging = (address, command, waitMs, length) -> {
            try {
                never.await();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
            throw new IOException("let go");
        };
        Site site = site(new Attached.I2c(Attached.Chip.SHT4X, 1, 0x45), new Attached.Hwmon(1, 0x44));
        try (PiSensors sensors = new PiSensors(site, root, () -> nowNs, bus -> hanging, new FakeLines())) {
            sensors.start();
            await().until(() -> air(sensors, 1) instanceof Reading.Value);
            assertThat(air(sensors, 0)).isEqualTo(Reading.NO_ANSWER);
        }
        never.countDown();
    }

    @Test
    void aBugInOneProbeDoesNotSilenceTheBus() {
        I2cBus bus = (address, command, waitMs, length) -> address == 0x45
                ? new byte[0]
                : ShtProbeTest.answer(0x6666, 0x6666); // too short: an index beyond its end
        Site site =
                site(new Attached.I2c(Attached.Chip.SHT4X, 1, 0x45), new Attached.I2c(Attached.Chip.SHT4X, 1, 0x44));
        PiSensors sensors = new PiSensors(site, root, () -> nowNs, number -> bus, new FakeLines());
        sensors.readOnce();
        assertThat(air(sensors, 0)).isEqualTo(Reading.NO_ANSWER);
        assertThat(air(sensors, 1)).isInstanceOf(Reading.Value.class);
    }

    @Test
    void whatIsPromisedAndNotThereIsLost() {
        PiSensors sensors = sensors();
        assertThat(sensors.latch().powersW()).containsOnly(Reading.NO_ANSWER);
        assertThat(sensors.latch().tankFull()).isEqualTo(Signal.LOST);
        assertThat(sensors.latch().doorOpen()).isEqualTo(Signal.NOT_FITTED);
    }

    private void passS(double seconds) {
        nowNs += (long) (seconds * 1e9);
    }

    private static Reading air(PiSensors sensors, int index) {
        return sensors.latch().sensors().get(index).airC();
    }

    private PiSensors sensors(Attached... attached) {
        return new PiSensors(
                site(attached),
                root,
                () -> nowNs,
                bus -> {
                    throw new AssertionError("no I2C here");
                },
                new FakeLines());
    }

    /** The test tunnel, its first sensors attached. */
    static Site site(Attached... attached) {
        Site site = Sites.metered();
        List<Sensor> sensors = new ArrayList<>(site.sensors());
        for (int i = 0; i < attached.length; i++) {
            Sensor bare = sensors.get(i);
            sensors.set(
                    i,
                    new Sensor(
                            bare.id(),
                            bare.place(),
                            true,
                            bare.uncertaintyK(),
                            bare.uncertaintyPercent(),
                            bare.limits(),
                            attached[i]));
        }
        return new Site(
                site.id(),
                site.name(),
                site.plants(),
                site.targets(),
                site.tunnel(),
                sensors,
                site.heater(),
                site.drying(),
                site.venting(),
                site.circuit(),
                site.tariff());
    }
}
