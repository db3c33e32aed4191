package rimeward.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;
import rimeward.adapter.config.SiteSettings;
import rimeward.site.Tunnel;
import rimeward.sizing.Input;

class SizeCommandTest {
    private static final String EXAMPLE = Path.of("..", "config", "tunnel.toml").toString();
    private static final String SNAP =
            Path.of("..", "config", "weather", "cold-snap-2014-01.csv").toString();

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir
    Path folder;

    @Test
    void dimensionsAreEnoughForASheetThatSaysItIsAGuess() {
        assertThat(size("--width-m", "4", "--length-m", "6")).isEqualTo(1);
        assertThat(out.toString())
                .startsWith("Heat loss of hoops 4 m wide and 2 m high, 6 m long\n* is assumed: 20 of 22 numbers")
                .contains(
                        "  --cover-W-per-m2K            6.8* W/m²K          --cover single-film: common practice, no source\n")
                .contains("  roof and sides  37.7 m² × 6.8 W/m²K                           256 W/K   66 %\n")
                .contains("  230 V × 13 A × 0.8 − 0 W = 2392 W for hours on end\n")
                .contains(
                        "TOO MUCH for this circuit: it carries 2392 W, and 2000 + 2000 + 2000 + 1500 W = 7500 W are to be bought\n")
                .contains("give the outside air of a winter with --weather FILE")
                .contains("licensed electrician")
                .contains("nothing here is safety-certified");
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void settingsGiveFloorCircuitAndPrices() {
        assertThat(size(
                        "--width-m",
                        "4",
                        "--length-m",
                        "6",
                        "--settings",
                        EXAMPLE,
                        "--weather",
                        SNAP,
                        "--outside-C",
                        "-3",
                        "--cover",
                        "bubble-lined-film"))
                .isZero();
        assertThat(out.toString())
                .contains("  --fuse-A                      20  A              settings " + EXAMPLE + "\n")
                .contains("  --outside-C                   −3  °C             given\n")
                .contains("7 days, coldest −9.9 °C on 2014-01-28 12:00 by the clock of Europe/London;")
                .contains("THIS IS NO WINTER, only 7 days")
                .contains(" such spells\n")
                .contains("daily extremes, joined by half waves of a cosine")
                .doesNotContain("TOO MUCH");
    }

    @Test
    void whatItSaysOfTheTunnelCanBePastedOverTheSettings() throws IOException {
        size("--width-m", "4", "--length-m", "6", "--height-m", "2.2", "--settings", EXAMPLE);
        String sheet = out.toString();
        String lines = sheet.substring(sheet.indexOf("[tunnel]\n"), sheet.indexOf("\nCautions"));
        String settings = Files.readString(Path.of(EXAMPLE));
        int from = settings.indexOf("\n[tunnel]\n") + 1;
        int to = settings.indexOf("# At least one sensor");
        Path pasted = folder.resolve("tunnel.toml");
        Files.writeString(pasted, settings.substring(0, from) + lines + settings.substring(to));
        Tunnel tunnel = SiteSettings.read(pasted).tunnel();
        assertThat(tunnel.floorAreaM2()).isEqualTo(24);
        assertThat(tunnel.altitudeM()).isEqualTo(310);
        assertThat(tunnel.heatLossWPerK()).isBetween(400.0, 430.0);
    }

    @Test
    void jsonHasTheSameNumbersInFull() {
        assertThat(size("--width-m", "4", "--length-m", "6", "--price-per-kWh", "0.2465", "--weather", SNAP, "--json"))
                .isEqualTo(1);
        assertThat(out.toString())
                .hasLineCount(1)
                .contains("\"price_per_kWh\":{\"value\":0.2465,\"basis\":\"given\",\"from\":\"given\"}")
                .contains("\"air_changes_per_h\":{\"value\":1.5,\"basis\":\"assumed\"")
                .contains("\"ground_edge_W_per_K\":27.600,")
                .contains("\"fits\":false,")
                .contains("\"form\":\"daily\",\"days\":7.000,\"is_winter\":false,")
                .contains("\"payback_spells\":")
                .doesNotContain("payback_winters");
        Yaml yaml = new Yaml(new SafeConstructor(new LoaderOptions())); // JSON is YAML, near enough
        assertThat(yaml.<Map<String, Object>>load(out.toString()))
                .containsKeys(
                        "inputs",
                        "areas",
                        "loss",
                        "heater",
                        "circuit",
                        "season",
                        "measures",
                        "tunnel_settings",
                        "cautions");
    }

    @Test
    void aWholeWinterIsToldAsOne() throws IOException {
        List<String> lines = new ArrayList<>(List.of("time,air °C"));
        for (int day = 0; day <= 100; day++) {
            lines.add(String.format(
                    Locale.ROOT, "%s,-1", LocalDate.of(2025, 11, 1).plusDays(day) + "T00:00Z"));
            for (int hour = 3; hour < 24; hour += 3) {
                lines.add(String.format(
                        Locale.ROOT, "%sT%02d:00Z,-1", LocalDate.of(2025, 11, 1).plusDays(day), hour));
            }
        }
        Path file = Files.write(folder.resolve("winter.csv"), lines, StandardCharsets.UTF_8);
        size("--width-m", "4", "--length-m", "6", "--weather", file.toString());
        assertThat(out.toString())
                .contains(" winters\n")
                .doesNotContain("NO WINTER")
                .doesNotContain("such spells");
    }

    @Test
    void everythingWrongIsToldAtOnceOnStandardError() {
        assertThat(size(
                        "--width-m",
                        "4",
                        "--length-m",
                        "x",
                        "--cover",
                        "fleece",
                        "--insulation",
                        "moss,edge-board",
                        "--fuse-A",
                        "500",
                        "--currency",
                        "",
                        "--weather",
                        "none.csv"))
                .isEqualTo(2);
        assertThat(out.toString()).isEmpty();
        assertThat(err.toString())
                .contains("--length-m is \"x\", which is no number; write digits with a point")
                .contains("--cover is \"fleece\"; it must be one of single-film,")
                .contains("--insulation names \"moss\"; it knows bubble-lining,")
                .contains("--fuse-A is 500 (given); it must lie between 1 and 125 A")
                .contains("--currency is \"\"; write one to eight letters")
                .contains("none.csv: there is no such weather file; check its name")
                .hasLineCount(6);
    }

    @Test
    void missingDimensionsAndBadFilesAreToldWithoutAStackTrace() throws IOException {
        assertThat(size("--eaves-m", "2")).isEqualTo(2);
        assertThat(err.toString())
                .contains("--width-m is missing: measure")
                .contains("--length-m is missing: measure")
                .contains("--height-m is missing: measure")
                .hasLineCount(3);
        Path latin = Files.write(folder.resolve("latin.csv"), "time,air °C\n".getBytes(StandardCharsets.ISO_8859_1));
        assertThat(size("--width-m", "4", "--length-m", "6", "--weather", latin.toString()))
                .isEqualTo(2);
        assertThat(err.toString()).contains("latin.csv: is not UTF-8 text; save it as UTF-8");
        assertThat(size("--width-m", "4", "--length-m", "6", "--weather", folder.toString()))
                .isEqualTo(2);
        assertThat(size("--width-m", "30", "--length-m", "200", "--height-m", "5"))
                .isEqualTo(2);
        assertThat(err.toString())
                .contains("cannot be read (")
                .contains("floorAreaM2 is 6000.0; it must lie between 1.0 and 2000.0; check the dimensions")
                .doesNotContain("\tat ");
    }

    @Test
    void helpNamesEveryOptionAndWhatIsAssumed() {
        assertThat(size("--help")).isZero();
        String help = out.toString().replaceAll("\\s+", " ");
        for (Input input : Input.values()) {
            assertThat(help).contains(input.option() + "=N");
        }
        assertThat(help)
                .contains("without it 1.5 (a film tunnel not sealed with care")
                .contains("at most 80 %, NEC");
    }

    private int size(String... words) {
        List<String> all = new ArrayList<>(List.of("size"));
        all.addAll(List.of(words));
        return Main.commandLine()
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(err, true))
                .execute(all.toArray(new String[0]));
    }
}
