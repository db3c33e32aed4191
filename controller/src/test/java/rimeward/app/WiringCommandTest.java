package rimeward.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WiringCommandTest {
    private static final String ATTACHED = """
            bench = "north bench"
            attached = { by = "one-wire", device = "28-0123456789ab" }
            """;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir
    private Path folder;

    private Path settings = Path.of("");

    @BeforeEach
    void oneSensorAttached() throws IOException {
        String text = Files.readString(Path.of("..", "config", "tunnel.toml"))
                .replaceFirst("bench = \"north bench\" .*\nhumidity = true", ATTACHED + "humidity = false");
        assertThat(text).contains("28-0123456789ab\" }");
        settings = Files.writeString(folder.resolve("tunnel.toml"), text);
    }

    @Test
    void whatIsThereAndWhatIsMissingAndWhatItReads() throws IOException {
        put(
                "sys/bus/w1/devices/28-0123456789ab/w1_slave",
                "72 01 4b 46 7f ff 0e 10 57 : crc=57 YES\n72 01 4b 46 t=23125\n");
        put("sys/bus/w1/devices/28-00000000cafe/w1_slave", "");
        assertThat(wiring()).isZero();
        assertThat(out.toString())
                .contains("  28-0123456789ab        DS18B20                sensor north-bench\n")
                .contains("not in the settings: by = \"one-wire\", device = \"28-00000000cafe\"\n")
                .contains("  north-bench      23.1 °C")
                .contains("No machine has a relay on a line")
                .doesNotContain("not found\n");
    }

    @Test
    void aSensorOfTheSettingsThatIsNotThereIsNamed() {
        assertThat(wiring()).isEqualTo(1);
        assertThat(out.toString())
                .contains("In the settings, and not found\n  sensor north-bench: by = \"one-wire\"")
                .contains("north-bench    NO ANSWER");
    }

    @Test
    void refusedWhileTheServiceRuns() throws IOException {
        try (DataLock service = DataLock.take(folder)) {
            assertThat(service).isNotNull();
            assertThat(wiring()).isEqualTo(2);
        }
        assertThat(err.toString()).contains("sudo systemctl stop rimeward").hasLineCount(1);
        assertThat(out.toString()).isEmpty();
    }

    @Test
    void aDataFolderWithoutAServiceIsLeftAsItIs() {
        wiring();
        assertThat(folder.resolve("rimeward.lock")).doesNotExist();
    }

    @Test
    void aDialThatIsNotThere() {
        assertThat(wiring("--dial", "dryer")).isEqualTo(2);
        assertThat(err.toString()).contains("--dial dryer is no heater stage; there are: heater-1, heater-2");
        assertThat(wiring("--dial", "heater-1", "--by", "outside")).isEqualTo(2);
        assertThat(err.toString()).contains("--by outside is no inside sensor");
        assertThat(wiring("--dial", "heater-1", "--swings", "0")).isEqualTo(2);
    }

    @Test
    void aDialNeedsSomebodyToTurnIt() {
        assertThat(wiring("--dial", "heater-1", "--yes")).isEqualTo(2);
        assertThat(err.toString()).contains("needs a terminal").hasLineCount(1);
    }

    private int wiring(String... more) {
        String[] args = new String[6 + more.length];
        String[] first = {"wiring", settings.toString(), "--data", folder.toString(), "--root", folder.toString()};
        System.arraycopy(first, 0, args, 0, 6);
        System.arraycopy(more, 0, args, 6, more.length);
        return Main.commandLine()
                .setOut(new PrintWriter(out, true))
                .setErr(new PrintWriter(err, true))
                .execute(args);
    }

    private void put(String file, String text) throws IOException {
        Path path = folder.resolve(file);
        Files.createDirectories(path.getParent());
        Files.writeString(path, text);
    }
}
