package rimeward.sim.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The sweep as its user runs it, on a few winters of two days. */
@Tag("slow")
class SweepCommandTest {
    private static final int WINTERS = 3;
    private static final String WEATHER = Path.of("..", "config", "weather").toString();

    @TempDir
    private Path folder;

    private final StringWriter said = new StringWriter();

    private int run(String... args) {
        PrintWriter out = new PrintWriter(said, true);
        List<String> all = new ArrayList<>(List.of("sweep"));
        all.addAll(List.of(args));
        return Main.commandLine().setOut(out).setErr(out).execute(all.toArray(String[]::new));
    }

    private Path sweep(String name, String... more) {
        Path out = folder.resolve(name);
        List<String> args = new ArrayList<>(
                List.of("--winters", "" + WINTERS, "--days", "2", "--out", out.toString(), "--weather", WEATHER));
        args.addAll(List.of(more));
        assertThat(run(args.toArray(String[]::new))).as("%s", said).isZero();
        return out;
    }

    @Test
    void theSameSeedsGiveTheSameBytesInOneThreadInSeveralInPartsAndAfterAStop() throws IOException {
        Path one = sweep("one", "--threads", "1");
        String whole = Files.readString(one.resolve("results.jsonl"));
        assertThat(whole.lines()).hasSize(1 + WINTERS);
        assertThat(said.toString()).contains("Every property held in every winter.", "duty", "always-on");

        assertThat(sweep("three", "--threads", "3").resolve("results.jsonl")).hasContent(whole);

        Files.writeString(one.resolve("results.jsonl"), whole.substring(0, whole.length() - 200)); // amid the last line
        said.getBuffer().setLength(0);
        assertThat(sweep("one", "--threads", "2").resolve("results.jsonl")).hasContent(whole);
        assertThat(said.toString()).contains("1 winters run in");

        Path first = sweep("parts", "--shard", "1/2").resolve("results-1-of-2.jsonl");
        Path second = sweep("parts", "--shard", "2/2").resolve("results-2-of-2.jsonl");
        assertThat(Files.readString(first)).isNotEqualTo(Files.readString(second));
        Path merged = folder.resolve("merged");
        assertThat(run("--merge", first.toString(), second.toString(), "--out", merged.toString()))
                .isZero();
        for (String file : List.of("summary.json", "summary.html")) {
            assertThat(merged.resolve(file)).hasSameTextualContentAs(one.resolve(file));
        }
    }

    @Test
    void whatCannotBeUsedIsRefusedWithWhatToDo() throws IOException {
        Files.writeString(folder.resolve("results.jsonl"), "{\"sweep\":\"rimeward\",\"build\":\"other\",\"days\":2}\n");
        assertThat(run("--winters", "1", "--days", "2", "--out", folder.toString(), "--weather", WEATHER))
                .isEqualTo(2);
        assertThat(said.toString()).contains("another program", "--out").doesNotContain("\tat ");
        assertThat(run("--shard", "3/2", "--out", folder.toString())).isEqualTo(2);
        assertThat(said.toString()).contains("part 3 of 2");
        assertThat(run("--weather", folder.toString(), "--out", folder.toString()))
                .isEqualTo(2);
        assertThat(said.toString()).contains("0 daily and 0 hourly files", "--weather");
    }
}
