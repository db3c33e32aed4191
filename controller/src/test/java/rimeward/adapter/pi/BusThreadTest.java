package rimeward.adapter.pi;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rimeward.core.reading.Reading;
import rimeward.site.Attached;
import rimeward.site.Sensor;

class BusThreadTest {
    @TempDir
    Path root;

    private final AtomicInteger asked = new AtomicInteger();
    private final AtomicInteger letGo = new AtomicInteger();

    private final Watched counting = new Watched() {
        @Override
        public void ask() {
            asked.incrementAndGet();
        }

        @Override
        public void letGo() {
            letGo.incrementAndGet();
        }
    };

    @Test
    void restsItsPaceBetweenRoundsAndLetsGoOnceItEnds() {
        BusThread thread = new BusThread("slow", 3_600_000, List.of(counting));
        thread.start();
        await().until(() -> asked.get() == 1);
        thread.close();
        await().until(() -> letGo.get() == 1);
        assertThat(asked.get()).as("not asked again within the hour").isEqualTo(1);
    }

    @Test
    void goesOnAskingTheOthersWhenOneThrows() {
        Watched bad = () -> {
            throw new IllegalStateException("a bug");
        };
        try (BusThread thread = new BusThread("quick", 1, List.of(bad, counting))) {
            thread.start();
            await().until(() -> asked.get() > 3);
        }
    }

    @Test
    void aSensorThatGoesAndComesBackWhileTheServiceRuns() {
        String chip = "sys/bus/i2c/devices/1-0044/hwmon/hwmon0/";
        Sysfs sysfs = new Sysfs(root).put(chip + "temp1_input", "4000").put(chip + "humidity1_input", "80000");
        Attached.Hwmon at = new Attached.Hwmon(1, 0x44);
        Sensor sensor = PiSensorsTest.site(at).sensors().get(0);
        Cell cell = new Cell(sensor);
        AtomicLong nowNs = new AtomicLong();
        WatchedSensor watched = new WatchedSensor(new HwmonProbe(root, at), cell, nowNs::get);
        try (BusThread thread = new BusThread("sensors", 1, List.of(watched))) {
            thread.start();
            await().until(() -> cell.latch(nowNs.get()).airC().equals(new Reading.Value(4, 0)));
            sysfs.remove(chip + "temp1_input");
            await().until(() -> {
                long laterNs = nowNs.addAndGet(1_000_000_000L);
                return cell.latch(laterNs).airC().equals(Reading.NO_ANSWER);
            });
            sysfs.put(chip + "temp1_input", "5000");
            await().until(() -> cell.latch(nowNs.get()).airC() instanceof Reading.Value back && back.value() == 5);
        }
    }
}
