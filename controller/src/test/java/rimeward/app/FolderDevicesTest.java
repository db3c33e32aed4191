package rimeward.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rimeward.core.reading.Loss;
import rimeward.core.reading.Reading;
import rimeward.core.reading.Signal;
import rimeward.fixture.Sites;
import rimeward.site.RelaySet;

class FolderDevicesTest {
    @TempDir
    Path folder;

    private FolderDevices devices;

    @BeforeEach
    void open() {
        devices = new FolderDevices(Sites.metered(), folder);
    }

    @Test
    void aMachineThatCannotBeSwitchedDoesNotKeepTheOthersFromIt() throws IOException {
        Files.writeString(folder.resolve("stage-1"), "a file where a folder must be");
        assertThatThrownBy(() -> devices.close(RelaySet.of(0b0111)))
                .isInstanceOf(UncheckedIOException.class)
                .hasMessageContaining("stage-1");
        assertThat(folder.resolve("stage-2/closed")).hasContent("1\n");
        assertThat(folder.resolve("dryer/closed")).hasContent("1\n");
        assertThat(folder.resolve("vent/closed")).hasContent("0\n");
    }

    @Test
    void floatAndPowerAreRead() throws IOException {
        assertThat(devices.latch().tankFull()).as("no file yet").isEqualTo(Signal.LOST);
        assertThat(devices.latch().doorOpen()).isEqualTo(Signal.NOT_FITTED);
        put("dryer/tank_full", "1\n");
        put("dryer/power_W", "612.5\n");
        put("stage-1/power_W", "nan\n");
        assertThat(devices.latch().tankFull()).isEqualTo(Signal.ON);
        assertThat(devices.latch().powersW().get(Sites.DRYER)).isEqualTo(new Reading.Value(612.5, 0));
        assertThat(devices.latch().powersW().get(Sites.STAGE_1)).isEqualTo(new Reading.Lost(Loss.FAULT_VALUE));
        put("dryer/tank_full", "0\n");
        assertThat(devices.latch().tankFull()).isEqualTo(Signal.OFF);
    }

    private void put(String file, String text) throws IOException {
        Path path = folder.resolve(file);
        Files.createDirectories(path.getParent());
        Files.writeString(path, text);
    }
}
