package rimeward.adapter.pi;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rimeward.core.reading.Loss;
import rimeward.core.reading.Reading;
import rimeward.core.reading.SensorReading;
import rimeward.site.Attached;

/**
 * The kernel's files as its drivers write them: Documentation/hwmon/sht3x.rst and sht4x.rst (names, thousandths), drivers/w1/slaves/
 * w1_therm.c ({@code w1_slave_show}), Documentation/ABI/testing/sysfs-bus-iio, drivers/iio/humidity/dht11.c. Temperatures and
 * humidities are made up; where a fault's own value counts, its source stands beside it.
 */
class KernelProbesTest {
    private static final String HWMON = "sys/bus/i2c/devices/1-0044/hwmon/hwmon3/";
    private static final String W1 = "sys/bus/w1/devices/28-0123456789ab/w1_slave";
    private static final String IIO = "sys/bus/iio/devices/iio:device0/";

    @TempDir
    Path root;

    private Sysfs sysfs;

    @BeforeEach
    void folder() {
        sysfs = new Sysfs(root);
    }

    @Test
    void hwmonInThousandths() {
        sysfs.put(HWMON + "name", "sht4x\n")
                .put(HWMON + "temp1_input", "4250\n")
                .put(HWMON + "humidity1_input", "81500\n");
        assertThat(hwmon()).isEqualTo(reading(value(4.25), value(81.5)));
    }

    /** EREMOTEIO, ETIMEDOUT, ENXIO, EIO, EPERM (asm-generic/errno.h): the kernels that hand them out are told of in HwmonProbe. */
    @ParameterizedTest
    @ValueSource(strings = {"-121", "-110", "-6", "-5", "-1"})
    void anErrorsNumberIsNoTemperature(String errno) {
        sysfs.put(HWMON + "name", "sht3x\n")
                .put(HWMON + "temp1_input", errno + "\n")
                .put(HWMON + "humidity1_input", "50000\n");
        assertThat(hwmon()).isEqualTo(reading(lost(Loss.FAULT_VALUE), lost(Loss.FAULT_VALUE)));
    }

    @Test
    void sht4xMayBeJustBelowZeroAndIsClamped() {
        // drivers/hwmon/sht4x.c: humidity = ((15625 * ticks) >> 13) - 6000, unclamped: -6000 at 0 ticks, 118998 at
        // 65535
        sysfs.put(HWMON + "name", "sht4x\n")
                .put(HWMON + "temp1_input", "-121\n")
                .put(HWMON + "humidity1_input", "-6000\n");
        assertThat(hwmon()).isEqualTo(reading(value(-0.121), value(0)));
        sysfs.put(HWMON + "humidity1_input", "118998\n");
        assertThat(hwmon().rhPercent()).isEqualTo(value(100));
    }

    @Test
    void unpluggedAndReplugged() {
        assertThat(hwmon().airC()).isEqualTo(Reading.NO_ANSWER);
        sysfs.put(HWMON + "temp1_input", "4000\n");
        assertThat(hwmon()).isEqualTo(reading(value(4), Reading.NO_ANSWER));
        sysfs.remove(HWMON + "temp1_input");
        assertThat(hwmon().airC()).isEqualTo(Reading.NO_ANSWER);
        sysfs.put(HWMON.replace("hwmon3", "hwmon1") + "temp1_input", "5000\n"); // the kernel gave it another number
        assertThat(hwmon().airC()).isEqualTo(value(5));
    }

    @Test
    void oneWire() {
        oneWire(0x0187, "YES", value(24.437)); // in sixteenths of a kelvin, cut to thousandths: w1_DS18B20_convert_temp
        oneWire(0xFFFF, "YES", value(-0.062));
        oneWire(0x0000, "YES", value(0));
        oneWire(0x01FF, "NO", lost(Loss.BAD_CHECKSUM));
        // Documentation/w1/slaves/w1_therm.rst, "features": 85.00 is the value at power-up, 127.94 too little power
        oneWire(0x0550, "YES", lost(Loss.FAULT_VALUE));
        oneWire(0x07FF, "YES", lost(Loss.FAULT_VALUE));
    }

    @Test
    void aShortedOneWireBusReadsAsZerosWhoseChecksumIsRight() {
        assertThat(OneWireText.checksum(new int[8])).isZero();
        oneWire("00 00 00 00 00 00 00 00 00 : crc=00 YES\n00 00 00 00 00 00 00 00 00 t=0\n", lost(Loss.FAULT_VALUE));
    }

    @Test
    void aOneWireReadThatFailsLeavesAnEmptyFile() {
        oneWire("", Reading.NO_ANSWER); // w1_slave_show returns 0 bytes
    }

    @Test
    void dht22IsNotAskedSoonerThanItsDriverWould() {
        // drivers/iio/humidity/dht11.c: DHT11_DATA_VALID_TIME, 2 s; the sensor itself wants as much (its datasheet,
        // from memory)
        assertThat(PiSensors.PACE_MS).isGreaterThan(2_000);
    }

    /** Where something that is no file stands in a file's place, reading it is refused, whoever we are. */
    @Test
    void aFileThatRefusesToBeReadIsNoAnswer() {
        sysfs.put(HWMON + "temp1_input/x", "")
                .put(HWMON + "humidity1_input", "50000\n")
                .put(W1 + "/x", "")
                .put(IIO + "name", "bme280")
                .put(IIO + "in_temp_input/x", "");
        assertThat(hwmon()).isEqualTo(reading(Reading.NO_ANSWER, value(50)));
        assertThat(new OneWireProbe(root, new Attached.OneWire("28-0123456789ab"))
                        .read()
                        .airC())
                .isEqualTo(Reading.NO_ANSWER);
        assertThat(new IioProbe(root, new Attached.Iio("bme280")).read().airC()).isEqualTo(Reading.NO_ANSWER);
    }

    @Test
    void aFileWeMayNotReadIsNoAnswer() throws IOException {
        sysfs.put(HWMON + "temp1_input", "4000\n");
        Path file = root.resolve(HWMON + "temp1_input");
        Files.setPosixFilePermissions(file, Set.of());
        assumeFalse(Files.isReadable(file), "root may read everything: the test above stands for this one");
        assertThat(hwmon().airC()).isEqualTo(Reading.NO_ANSWER);
    }

    @Test
    void iioFoundByName() {
        sysfs.put("sys/bus/iio/devices/iio:device0/name", "dht11@4\n");
        sysfs.put("sys/bus/iio/devices/iio:device1/name", "bme280\n");
        sysfs.put("sys/bus/iio/devices/iio:device1/in_temp_input", "3810\n");
        sysfs.put("sys/bus/iio/devices/iio:device1/in_humidityrelative_input", "91000\n");
        assertThat(new IioProbe(root, new Attached.Iio("bme280")).read()).isEqualTo(reading(value(3.81), value(91)));
    }

    @Test
    void dht22TimesOut() {
        sysfs.put(IIO + "name", "dht11@4\n"); // the driver's read fails with ETIMEDOUT: as good as no file
        assertThat(new IioProbe(root, new Attached.Iio("dht11@4")).read())
                .isEqualTo(reading(Reading.NO_ANSWER, Reading.NO_ANSWER));
    }

    @Test
    void rubbishIsNoNumber() {
        sysfs.put(HWMON + "temp1_input", "4.2\n").put(HWMON + "humidity1_input", "\n");
        assertThat(hwmon()).isEqualTo(reading(lost(Loss.FAULT_VALUE), Reading.NO_ANSWER));
    }

    private SensorReading hwmon() {
        return new HwmonProbe(root, new Attached.Hwmon(1, 0x44)).read();
    }

    private void oneWire(int sixteenthsK, String verdict, Reading expected) {
        oneWire(OneWireText.of(sixteenthsK, verdict), expected);
    }

    private void oneWire(String text, Reading expected) {
        sysfs.put(W1, text);
        assertThat(new OneWireProbe(root, new Attached.OneWire("28-0123456789ab")).read())
                .as(text)
                .isEqualTo(reading(expected, Reading.NOT_FITTED));
    }

    private static SensorReading reading(Reading airC, Reading rhPercent) {
        return new SensorReading(airC, rhPercent);
    }

    private static Reading value(double value) {
        return new Reading.Value(value, 0);
    }

    private static Reading lost(Loss why) {
        return new Reading.Lost(why);
    }
}
