package rimeward.adapter.pi;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PiHealthTest {
    private static final String ALARM = "sys/class/hwmon/hwmon1/in0_lcrit_alarm";
    private static final long SECOND_NS = 1_000_000_000L;
    private static final long GIB = 1L << 30;

    @TempDir
    Path root;

    private final AtomicLong nowNs = new AtomicLong();
    private Sysfs sysfs;
    private PiHealth health;

    @BeforeEach
    void aPi() {
        sysfs = new Sysfs(root).put("sys/class/hwmon/hwmon0/name", "cpu_thermal\n");
        health = new PiHealth(root, root, nowNs::get);
    }

    private boolean isLowAfter(long seconds) {
        nowNs.addAndGet(seconds * SECOND_NS);
        health.lookOnce();
        return health.isVoltageLow();
    }

    @Test
    void aDipOfTheSupplyCountsForAMinute() {
        sysfs.put("sys/class/hwmon/hwmon1/name", "rpi_volt\n").put(ALARM, "0\n");
        assertThat(isLowAfter(0)).isFalse();
        sysfs.put(ALARM, "1\n");
        assertThat(isLowAfter(1)).isTrue();
        sysfs.put(ALARM, "0\n");
        assertThat(isLowAfter(59)).isTrue();
        assertThat(isLowAfter(1)).isFalse();
    }

    @Test
    void aComputerThatDoesNotMeasureItsSupplyIsTakenToBeWellFed() {
        assertThat(isLowAfter(0)).isFalse();
    }

    @Test
    void littleRoomIsLittleOfTheDiskAndLittleForTheRecord() {
        assertThat(WatchedDisk.isNearlyFull(2 * GIB, 64 * GIB))
                .as("3 %, but room for years")
                .isFalse();
        assertThat(WatchedDisk.isNearlyFull(200 << 20, 64 * GIB)).isTrue();
        assertThat(WatchedDisk.isNearlyFull(200 << 20, GIB))
                .as("a small disk, a fifth free")
                .isFalse();
        assertThat(WatchedDisk.isNearlyFull(0, GIB)).isTrue();
    }

    @Test
    void aFolderThatIsNotThereSaysNothingOfItsDisk() {
        PiHealth absent = new PiHealth(root, root.resolve("absent"), nowNs::get);
        absent.lookOnce();
        assertThat(absent.isDiskNearlyFull()).isFalse();
    }
}
