package rimeward.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rimeward.adapter.config.SiteSettings;
import rimeward.adapter.journal.JournalLimits;
import rimeward.adapter.journal.RecordFile;
import rimeward.adapter.journal.SqliteJournal;
import rimeward.core.ControlCycle;
import rimeward.core.ControlState;
import rimeward.core.Stepped;
import rimeward.core.decision.DutyLaw;
import rimeward.core.outlook.Outlook;
import rimeward.fixture.Frames;
import rimeward.fixture.Sites;
import rimeward.record.WeatherCsv;

class RecordCommandTest {
    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @BeforeEach
    void aRecordOfOneHour() {
        var site = Sites.metered();
        ControlCycle cycle = new ControlCycle(site, new DutyLaw());
        ControlState state = cycle.start();
        Frames frames = Frames.steady(4.5, 90);
        Clock clock = Clock.fixed(Instant.EPOCH, ZoneOffset.UTC);
        try (SqliteJournal journal = SqliteJournal.open(
                file(), site, ZoneOffset.UTC, clock, JournalLimits.usual(), alert -> {}, trouble -> {})) {
            for (int i = 0; i < 720; i++) {
                Stepped stepped =
                        cycle.step(state, frames.jitter((i % 5) * 0.01).after(5), Outlook.NONE);
                journal.record(stepped, List.of());
                state = stepped.next();
            }
        }
    }

    private Path file() {
        return folder.resolve("record.db");
    }

    private int run(String... args) {
        return Main.commandLine()
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(err))
                .execute(args);
    }

    @Test
    void aNightIsALine() {
        assertThat(run("record", file().toString(), "nights")).isZero();
        assertThat(out.toString().lines().toList()).hasSize(2);
        assertThat(out.toString()).contains("2025-11-24", "4.5°C", "0.0°C", "1.0h", "stage-1");
    }

    @Test
    void anExportGoesIntoAFreshFileOnly() {
        String dir = folder.resolve("out").toString();
        String copy = folder.resolve("copy.db").toString();
        assertThat(run("record", file().toString(), "export", dir)).isZero();
        assertThat(run("record", copy, "import", dir)).isZero();
        assertThat(run("record", copy, "import", dir)).isEqualTo(2);
        assertThat(err.toString()).contains(copy + ": exists already; import goes into a fresh file only");
    }

    @Test
    void aBadLineIsNamedAndNothingIsLeftBehind() throws IOException {
        Path dir = folder.resolve("out");
        run("record", file().toString(), "export", dir.toString());
        Path frames = dir.resolve("frame.csv");
        List<String> lines = Files.readAllLines(frames, StandardCharsets.UTF_8);
        lines.set(6, lines.get(6) + ",1");
        Files.write(frames, lines, StandardCharsets.UTF_8);
        assertThat(run("record", folder.resolve("copy.db").toString(), "import", dir.toString()))
                .isEqualTo(2);
        assertThat(err.toString()).contains(frames + ":7: has 22 cells, the header 21; mend or remove the line");
        assertThat(folder.resolve("copy.db")).doesNotExist();
    }

    @Test
    void whatIsNoRecordIsRefused() throws IOException {
        assertThat(run("record", folder.resolve("none.db").toString())).isEqualTo(2);
        assertThat(err.toString()).contains("none.db: there is no such file; name the record of the service");
        Path text = Files.writeString(folder.resolve("text.db"), "no database ".repeat(500));
        assertThat(run("record", text.toString(), "nights")).isEqualTo(2);
        assertThat(err.toString()).contains("text.db: ");
        assertThat(text).hasContent("no database ".repeat(500));
    }

    @Test
    void theOutsideIsAWeatherFile() throws IOException {
        Path settings = Path.of("..", "config", "tunnel.toml");
        var weather = new WeatherCsv(SiteSettings.read(settings), 1.5, 0.5);
        assertThat(weather.header(54.4, -2.1, 240))
                .contains("# place: latitude 54.4, longitude -2.1, altitude 240.0 m\n");
        var site = new WeatherCsv(Sites.metered(), 1.5, 0.5);
        var rows = RecordFile.frames(file());
        assertThat(site.row(rows.get(0))).contains("2025-11-24T16:00:05Z,0.0,80.0,1.5,0.5\n");
        assertThat(site.row(rows.get(0))).as("the same moment again").isEmpty();
    }
}
