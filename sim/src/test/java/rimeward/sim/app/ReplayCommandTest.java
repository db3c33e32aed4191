package rimeward.sim.app;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The replay as its user runs it: exit code, what is said, what is written. */
class ReplayCommandTest {
    private static final Path CONFIG = Path.of("..", "config");
    private static final String COLD_SNAP =
            CONFIG.resolve("scenarios/cold-snap.toml").toString();
    private static final List<String> ONE_NIGHT =
            List.of("--from", "2014-01-27T12:00", "--to", "2014-01-28T12:00", "--against", "thermostat");

    @TempDir
    private Path folder;

    private final StringWriter said = new StringWriter();

    private int run(String... args) {
        PrintWriter out = new PrintWriter(said, true);
        return Main.commandLine().setOut(out).setErr(out).execute(args);
    }

    private int night(Path report, String... more) {
        List<String> args = Stream.of(
                        List.of("replay", COLD_SNAP, "--report", report.toString()), ONE_NIGHT, List.of(more))
                .flatMap(List::stream)
                .toList();
        return run(args.toArray(String[]::new));
    }

    private void refuses(String sentence, String... args) {
        assertThat(run(args)).isEqualTo(2);
        assertThat(said.toString()).contains(sentence).doesNotContain("\tat ");
    }

    private Path scenario(String name, String find, String put) throws IOException {
        String text = Files.readString(Path.of(COLD_SNAP), UTF_8);
        assertThat(text).contains(find);
        String absolute = CONFIG.toAbsolutePath().normalize() + "/";
        Path file = folder.resolve(name);
        Files.writeString(file, text.replace(find, put).replace("\"../", "\"" + absolute), UTF_8);
        return file;
    }

    @Test
    void holdsTheFloorThroughARecordedNightAndWritesItsResults() {
        assertThat(night(folder)).isZero();
        assertThat(said.toString())
                .contains("duty: Held. The floor of 4.0 °C held throughout")
                .contains("below the floor, min")
                .contains("Report: " + folder.resolve("report.html"));
        assertThat(folder).isDirectoryContaining("glob:**/summary.json").isDirectoryContaining("glob:**/trace.csv");
    }

    @Test
    void theSameReplayTwiceWritesTheSameBytes() throws IOException {
        night(folder.resolve("one"));
        night(folder.resolve("two"));
        List<Path> written;
        try (Stream<Path> files = Files.list(folder.resolve("one"))) {
            written = files.toList();
        }
        assertThat(written).hasSizeGreaterThanOrEqualTo(4);
        for (Path file : written) {
            assertThat(file).hasSameBinaryContentAs(folder.resolve("two").resolve(file.getFileName()));
        }
    }

    @Test
    void anotherSeedIsAnotherNight() throws IOException {
        night(folder.resolve("one"));
        night(folder.resolve("two"), "--seed", "2");
        assertThat(Files.mismatch(folder.resolve("one/trace.csv"), folder.resolve("two/trace.csv")))
                .isNotNegative();
    }

    @Test
    void aMissedGateIsExitCodeOne() throws IOException {
        Path gates = folder.resolve("gates.toml");
        Files.writeString(gates, "[gates]\nmost_total_kWh = 1\n", UTF_8);
        assertThat(night(folder, "--gates", gates.toString())).isEqualTo(1);
        assertThat(said.toString()).contains("GATE MISSED most_total_kWh");
    }

    @Test
    void aLawFromAJarRunsUnderTheGuardAndTheFloorHolds() throws IOException {
        Path jar = LawJars.holding(folder, "IdleLaw", LawJars.IDLE);
        assertThat(night(folder, "--law", jar.toString())).isZero();
        assertThat(said.toString()).contains("idle: Held.");
    }

    @Test
    void aJarWithoutALawIsRefused() throws IOException {
        refuses(
                "holds no control law",
                "replay",
                COLD_SNAP,
                "--law",
                LawJars.empty(folder).toString());
    }

    @Test
    void anUnknownLawIsRefusedWithTheKnownOnes() {
        refuses("law \"dutty\" is not known; use one of duty, thermostat", "replay", COLD_SNAP, "--law", "dutty");
    }

    @Test
    void aMissingScenarioIsRefused() {
        refuses("nowhere.toml:1: the file does not exist", "replay", "nowhere.toml");
    }

    @Test
    void aMissingWeatherFileIsRefused() {
        refuses("no.csv: there is no such file", "replay", COLD_SNAP, "--weather", "no.csv");
    }

    @Test
    void aBrokenLineOfWeatherIsRefusedWithItsNumber() throws IOException {
        Path weather = folder.resolve("broken.csv");
        List<String> lines = Files.readAllLines(CONFIG.resolve("weather/cold-night-1995-03-18.csv"), UTF_8);
        int broken = lines.size() - 5;
        lines.set(broken, lines.get(broken).replaceFirst(",.*", ",cold"));
        Files.write(weather, lines, UTF_8);
        refuses("line " + (broken + 1), "replay", COLD_SNAP, "--weather", weather.toString());
    }

    @Test
    void aMisspeltKeyIsRefusedWithTheLikelyOne() throws IOException {
        Path file = scenario("typo.toml", "against =", "agianst =");
        refuses("agianst is not a known table; did you mean against?", "replay", file.toString());
    }

    @Test
    void anImpossibleFloorIsRefusedWithItsLimit() throws IOException {
        Path file = scenario("hot.toml", "[time]", "[[settings.plant]]\nname = \"orchid\"\nminimum_C = 44\n\n[time]");
        refuses("minimum_C = 44 must lie between -10 and 20", "replay", file.toString());
    }

    @Test
    void aTimeThatIsNoneIsRefused() {
        refuses("\"soon\" is no time; write a date", "replay", COLD_SNAP, "--from", "soon");
    }
}
