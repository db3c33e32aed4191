package rimeward.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

class ReleaseCommandTest {
    private static final Path EXAMPLE = Path.of("..", "config", "tunnel.toml");
    private static final String RELAY = """
            [heater.stage.relay]
            chip = "pinctrl-bcm2835"
            line = 17
            active_low = true
            closed_at_start = true
            closed_at_stop = true

            [[heater.stage]]
            id = "heater-2"
            """;

    private final StringWriter err = new StringWriter();

    @TempDir
    private Path folder;

    @Test
    void settingsWithoutARelayOnALineHaveNothingToRelease() {
        assertThat(release(EXAMPLE, Map.of())).isZero();
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void aLineThatCannotBeHadIsNamed() throws IOException {
        assertThat(release(changed("[[heater.stage]]\nid = \"heater-2\"\n", RELAY), Map.of()))
                .isEqualTo(1);
        assertThat(err.toString())
                .startsWith("rimeward: not in its stop state: ")
                .contains("Raspberry Pi");
    }

    @Test
    void brokenSettingsLeaveTheRelaysAndSaySo() throws IOException {
        assertThat(release(
                        changed("hot_C = 25", "hot_C = 5"), Map.of("SERVICE_RESULT", "exit-code", "EXIT_STATUS", "1")))
                .isEqualTo(2);
        assertThat(err.toString())
                .startsWith("<1>rimeward: the relays stay as they are")
                .contains("hot_C");
    }

    @Test
    void aServiceThatIsNotStartedAgainIsShoutedOf() {
        assertThat(release(EXAMPLE, Map.of("SERVICE_RESULT", "exit-code", "EXIT_STATUS", "2")))
                .isZero();
        assertThat(err.toString())
                .startsWith("<1>rimeward: THE TUNNEL IS NOT CONTROLLED")
                .hasLineCount(1);
    }

    private int release(Path file, Map<String, String> environment) {
        CommandLine line = Main.answering(new CommandLine(new ReleaseCommand(environment)));
        return line.setErr(new PrintWriter(err, true)).execute(file.toString());
    }

    private Path changed(String from, String to) throws IOException {
        String text = Files.readString(EXAMPLE);
        assertThat(text).contains(from);
        return Files.writeString(folder.resolve("tunnel.toml"), text.replace(from, to));
    }
}
