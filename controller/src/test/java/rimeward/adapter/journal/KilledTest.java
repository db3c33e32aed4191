package rimeward.adapter.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.HashSet;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rimeward.alert.Alert;
import rimeward.record.SavedState;

/** kill −9 at random moments: what was told to be on the disk is there, and the file is sound. */
class KilledTest {
    private static final long SEED = 20_251_124;

    @TempDir
    private Path folder;

    private final Random chance = new Random(SEED);
    private final Set<String> promised = new HashSet<>();
    private int state;

    @Test
    void nothingIsLostInFiveKills() throws Exception {
        survive(5);
    }

    @Test
    @Tag("slow")
    void nothingIsLostInManyKills() throws Exception {
        survive(Integer.getInteger("kills", 40));
    }

    private void survive(int kills) throws Exception {
        Path file = folder.resolve("record.db");
        int next = 1;
        for (int kill = 0; kill < kills; kill++) {
            writeAndBeKilled(file, next);
            check(file, kill);
            next = state + 1000; // apart from what was under way
        }
        assertThat(promised).hasSizeGreaterThan(kills);
    }

    private void writeAndBeKilled(Path file, int first) throws IOException, InterruptedException {
        Process child = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Writing.class.getName(),
                        file.toString(),
                        Integer.toString(first))
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        try (BufferedReader lines =
                new BufferedReader(new InputStreamReader(child.getInputStream(), StandardCharsets.UTF_8))) {
            int most = 1 + chance.nextInt(60);
            for (int i = 0; i < most; i++) {
                note(lines.readLine());
            }
            long spins = chance.nextInt(200_000); // anywhere between one line and the next
            for (long i = 0; i < spins; i++) {
                Thread.onSpinWait();
            }
            child.toHandle().destroyForcibly(); // of the process itself it would close the pipe unread
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                note(line);
            }
            child.waitFor();
        }
    }

    private void note(String line) {
        assertThat(line).as("the child ended by itself").isNotNull().doesNotStartWith("trouble");
        if (line.startsWith("alert ")) {
            promised.add(line.substring(6));
        } else {
            state = Integer.parseInt(line.substring(6));
        }
    }

    private void check(Path file, int kill) throws SQLException {
        String which = "kill " + kill + ", seed " + SEED;
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                var statement = connection.createStatement();
                var row = statement.executeQuery("PRAGMA integrity_check")) {
            assertThat(row.getString(1)).as(which).isEqualTo("ok");
        }
        Set<String> found = new HashSet<>();
        RecordFile.alerts(file).stream().map(Alert::text).forEach(found::add);
        assertThat(found).as(which).containsAll(promised);
        double kept = SavedState.parse(
                        RecordFile.read(file, Database::newestState).orElseThrow())
                .assumedOutsideC();
        assertThat(kept).as(which).isGreaterThanOrEqualTo(state);
    }
}
