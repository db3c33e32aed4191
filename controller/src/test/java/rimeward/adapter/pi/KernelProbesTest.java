package rimeward.adapter.pi;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rimeward.core.reading.Loss;
import rimeward.core.reading.Reading;
import rimeward.core.reading.SensorReading;
import rimeward.site.Attached;

/** The kernel's files as its drivers write them (Documentation/hwmon, Documentation/w1, Documentation/ABI/testing/sysfs-bus-iio). */
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
        sysfs.put(HWMON + "name", "sht4x\n")
                .put(HWMON + "temp1_input", "-121\n")
                .put(HWMON + "humidity1_input", "-5998\n");
        assertThat(hwmon()).isEqualTo(reading(value(-0.121), value(0)));
        sysfs.put(HWMON + "humidity1_input", "118999\n");
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
        // the example of Documentation/w1/slaves/w1_therm: 24.437 °C
        oneWire("87 01 4b 46 7f ff 09 10 a1 : crc=a1 YES\n87 01 4b 46 7f ff 09 10 a1 t=24437\n", value(24.437));
        oneWire(
                "ff 01 4b 46 7f ff 09 10 a1 : crc=77 NO\nff 01 4b 46 7f ff 09 10 a1 t=31937\n",
                lost(Loss.BAD_CHECKSUM));
        oneWire(
                "50 05 4b 46 7f ff 0c 10 1c : crc=1c YES\n50 05 4b 46 7f ff 0c 10 1c t=85000\n",
                lost(Loss.FAULT_VALUE));
        oneWire(
                "ff 07 4b 46 7f ff 0c 10 f9 : crc=f9 YES\nff 07 4b 46 7f ff 0c 10 f9 t=127937\n",
                lost(Loss.FAULT_VALUE));
        oneWire("00 00 00 00 00 00 00 00 00 : crc=00 YES\n00 00 00 00 00 00 00 00 00 t=0\n", lost(Loss.FAULT_VALUE));
        oneWire("00 00 4b 46 7f ff 10 10 3f : crc=3f YES\n00 00 4b 46 7f ff 10 10 3f t=0\n", value(0));
        oneWire("", Reading.NO_ANSWER);
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
