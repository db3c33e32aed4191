package rimeward.adapter.pi;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rimeward.core.reading.Loss;
import rimeward.core.reading.Reading;
import rimeward.core.reading.SensorReading;
import rimeward.site.Attached;

class HandedInTest {
    private static final long START_NS = -3_000_000_000L; // the monotonic clock may begin anywhere

    @TempDir
    Path root;

    private long nowNs = START_NS;

    @Test
    void aReadingIsKeptWithItsAgeAsLongAsTheSettingsLetIt() {
        PiSensors sensors = sensors();
        assertThat(accept(sensors, 4.5, 81, nowNs)).isTrue();
        nowNs += 45_000_000_000L; // others send as seldom as they like
        assertThat(first(sensors)).isEqualTo(new SensorReading(new Reading.Value(4.5, 45), new Reading.Value(81, 45)));
        nowNs += 16_000_000_000L; // max_age_s is 60
        assertThat(first(sensors)).isEqualTo(new SensorReading(Reading.NO_ANSWER, Reading.NO_ANSWER));
        accept(sensors, 5, 80, nowNs - 2_000_000_000L);
        assertThat(first(sensors).airC()).isEqualTo(new Reading.Value(5, 2));
    }

    @Test
    void lateAndEarlyMessages() {
        PiSensors sensors = sensors();
        accept(sensors, 5, 80, nowNs);
        accept(sensors, 9, 70, nowNs - 1);
        assertThat(first(sensors).airC()).as("an older one changes nothing").isEqualTo(new Reading.Value(5, 0));
        accept(sensors, 6, 80, nowNs + 3_600_000_000_000L);
        nowNs += 10_000_000_000L;
        assertThat(first(sensors).airC()).as("a time to come is now").isEqualTo(new Reading.Value(6, 10));
    }

    @Test
    void nonsenseIsNoNumber() {
        PiSensors sensors = sensors();
        accept(sensors, Double.NaN, Double.POSITIVE_INFINITY, nowNs);
        Reading fault = new Reading.Lost(Loss.FAULT_VALUE);
        assertThat(first(sensors)).isEqualTo(new SensorReading(fault, fault));
    }

    @Test
    void onlySensorsThatWaitForReadingsTakeThem() {
        PiSensors sensors = sensors();
        SensorReading reading = new SensorReading(new Reading.Value(4, 0), Reading.NOT_FITTED);
        assertThat(sensors.handedIn().accept("middle", reading, nowNs))
                .as("not attached so")
                .isFalse();
        assertThat(sensors.handedIn().accept("nobody", reading, nowNs)).isFalse();
    }

    private static boolean accept(PiSensors sensors, double airC, double rhPercent, long takenNs) {
        return sensors.handedIn()
                .accept(
                        "cold-corner",
                        new SensorReading(new Reading.Value(airC, 0), new Reading.Value(rhPercent, 0)),
                        takenNs);
    }

    private static SensorReading first(PiSensors sensors) {
        return sensors.latch().sensors().get(0);
    }

    private PiSensors sensors() {
        return new PiSensors(
                PiSensorsTest.site(new Attached.HandedIn("tunnel/cold-corner")),
                root,
                () -> nowNs,
                bus -> {
                    throw new AssertionError("no I2C here");
                },
                new FakeLines());
    }
}
