package rimeward.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rimeward.fixture.Example;

class CheckCommandTest {

    private static final Path EXAMPLE = Path.of("..", "config", "tunnel.toml");

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir
    Path folder;

    @Test
    void tellsWhatTheExampleMeans() {
        assertThat(check(EXAMPLE)).isZero();
        assertThat(out.toString())
                .contains("  potted citrus                4 °C  sets the floor\n")
                .contains("  230 V × 20 A × 0.8 − 10 W = 3670 W for hours on end\n")
                .contains("  all machines: 1500 + 1500 + 550 + 25 = 3575 W, which fits\n")
                .contains("  the heater, 3000 W, can hold 4 °C down to −12.22 °C outside\n")
                .contains("  heater and dryer, 3550 W, can hold 4 °C down to −15.19 °C outside\n")
                .contains("  a kilowatt-hour costs 0.29 GBP, from 00:30 to 07:30 0.13, by the clock of Europe/London\n")
                .endsWith("\nNothing unwise was found.\n");
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void refusedSettingsAreToldWithoutAStackTrace() throws IOException {
        Path file = changed("hot_C = 25", "hot_C = 5");
        assertThat(check(file)).isEqualTo(2);
        assertThat(out.toString()).isEmpty();
        assertThat(err.toString())
                .startsWith(file + ":")
                .doesNotContain("\tat ")
                .hasLineCount(1);
    }

    @Test
    void missingFile() {
        assertThat(check(folder.resolve("none.toml"))).isEqualTo(2);
        assertThat(err.toString())
                .contains("none.toml")
                .contains("does not exist")
                .hasLineCount(1);
    }

    @Test
    void warnsOfALoadThatMustBeShed() throws IOException {
        assertThat(check(changed("fuse_A = 20", "fuse_A = 18"))).isZero();
        assertThat(out.toString())
                .contains("3575 W, which is too much at once\n")
                .contains(
                        "  - the summed load of 3575 W is above the 3302 W of the circuit: when all would run, in the cold the"
                                + " dryer goes off first\n")
                .doesNotContain("heater and dryer, 3550 W");
    }

    @Test
    void countsOnlyTheHeaterStagesThatTheCircuitCarries() throws IOException {
        assertThat(check(changed("fuse_A = 20", "fuse_A = 9"))).isZero();
        assertThat(out.toString())
                .contains("only 1500 W count")
                .contains("  the heater, 1500 W, can hold 4 °C down to −4.11 °C outside\n");
    }

    @Test
    void warnsOfTooFewSensors() throws IOException {
        String text = Files.readString(EXAMPLE);
        int from = text.indexOf("[[sensor]]", text.indexOf("[[sensor]]") + 1);
        int to = text.indexOf("# Machines.");
        assertThat(check(write(text.substring(0, from) + text.substring(to)))).isZero();
        assertThat(out.toString()).contains("one inside sensor only").contains("no sensor hangs outside");
    }

    @Test
    void warnsOfADryerThatStopsUnseen() throws IOException {
        String text = Files.readString(EXAMPLE)
                .replace("power_feedback = true", "power_feedback = false")
                .replace("tank_float = true ", "tank_float = false ")
                .replace("minimum_air_C = 1 ", "minimum_air_C = 8 ");
        assertThat(check(write(text))).isZero();
        assertThat(out.toString())
                .contains("the dryer has no power feedback")
                .contains("no heater stage has power feedback")
                .contains("does not see the dryer's tank float")
                .contains("locked out below 8 °C");
    }

    @Test
    void warnsOfRelaysThatLeaveTheTunnelColdWhenTheProgramEnds() throws IOException {
        String relay =
                "[heater.stage.relay]\nchip = \"c\"\nline = 17\nactive_low = false\nclosed_at_start = false\nclosed_at_stop = false\n";
        assertThat(check(changed("[[heater.stage]]\nid = \"heater-2\"", relay + "[[heater.stage]]\nid = \"heater-2\"")))
                .isZero();
        assertThat(out.toString())
                .contains("  heater-1, relay        c line 17, active high, open at start, open at stop\n")
                .contains("no heater stage is closed at stop")
                .contains("those without are never switched");
    }

    @Test
    void warnsOfAPullThatMovesARelayWhileThePiStarts() throws IOException {
        String relay =
                "[heater.stage.relay]\nchip = \"pinctrl-rp1\"\nline = %d\nactive_low = true\nclosed_at_start = true\nclosed_at_stop = true\n";
        String before = "[[heater.stage]]\nid = \"heater-2\"";
        assertThat(check(changed(before, String.format(Locale.ROOT, relay, 5) + before)))
                .isZero();
        assertThat(out.toString())
                .contains("its own pull on line 5 leaves the relay of heater-1 open, and at stop it is to be closed");
        out.getBuffer().setLength(0);
        assertThat(check(changed(before, String.format(Locale.ROOT, relay, 17) + before)))
                .isZero();
        assertThat(out.toString()).doesNotContain("its own pull");
    }

    @Test
    void tellsHowEverythingIsAttached() throws IOException {
        assertThat(check(wired(17))).isZero();
        assertThat(out.toString())
                .contains("""
                        Wiring
                          north-bench            SHT4x read directly, bus 1 address 0x44
                          middle-bench           not attached
                        """)
                .contains("  heater-1, power        1000 pulses/kWh on pinctrl-rp1 line 23, active low, pulled up\n")
                .contains("  heater-2, power        not attached\n")
                .contains("  vent-fan, power        not seen\n")
                .contains("  tank float             pinctrl-rp1 line 24, active high, pulled up\n")
                .contains("  door switch            pinctrl-rp1 line 25, active high, pulled up\n");
    }

    @Test
    void warnsOfWhatIsPromisedAndNotAttached() throws IOException {
        assertThat(check(wired(17))).isZero();
        assertThat(out.toString())
                .contains("  - sensor middle-bench is not attached, and other things are: it gives no reading\n")
                .contains("  - power_feedback of heater-2 is true and no meter is attached")
                .doesNotContain("power_feedback of heater-1")
                .doesNotContain("tank_float is true and no contact");
    }

    @Test
    void tellsWhereForecastsComeFromAndWhatLeavesTheHouse() throws IOException {
        assertThat(check(EXAMPLE)).isZero();
        assertThat(out.toString()).contains("\nForecast\n  none: nights are told from this tunnel's own air\n");
        assertThat(check(write(Example.live().replace("latitude_deg = 54.98 ", "latitude_deg = 54.9817 "))))
                .isZero();
        assertThat(out.toString())
                .contains(
                        "  from api.met.no, for the air near 54.98° north, 2.36° west (rounded: no more is told of the place, but"
                                + " its altitude)\n  says that grower@hallin.example is asking\n")
                .contains("  - [forecast] contact is the example's, grower@hallin.example");
    }

    @Test
    void coordinatesThatAreNoneAreRefused() throws IOException {
        String live = Example.live();
        assertThat(check(write(live.replace("latitude_deg = 54.98 ", "latitude_deg = 549.8 "))))
                .isEqualTo(2);
        assertThat(err.toString()).contains("forecast.latitude_deg = 549.8 must lie between -90 and 90");
    }

    @Test
    void settingsForTheSimulatorAreNotWarnedOfMissingWires() {
        assertThat(check(EXAMPLE)).isZero();
        assertThat(out.toString())
                .contains("nothing is attached: settings for the simulator, or not wired yet\n")
                .doesNotContain("Allowed, but think again");
    }

    @Test
    void warnsOfARelayOnTheSerialPort() throws IOException {
        assertThat(check(wired(14))).isZero();
        assertThat(out.toString()).contains("  - the relay of heater-1 is on line 14, the serial port's output");
    }

    @Test
    void warnsOfContactsThatACutWireMakesLie() throws IOException {
        String text = Files.readString(wired(17))
                .replace("by = \"pulses\"", "by = \"contact\"")
                .replace("pulses_per_kWh = 1000\n", "")
                .replaceAll("(line = 23\nactive_low = true .*\npull = )\"up\"", "$1\"down\"")
                .replaceAll("(line = 24\nactive_low = )false", "$1true");
        assertThat(check(write(text))).isZero();
        assertThat(out.toString())
                .contains("a cut wire of heater-1's contact reads as a running machine")
                .contains("a cut wire of the tank's float reads as not full");
    }

    /** The example with its commented tables alive, heater-1's relay on this line. */
    private Path wired(int line) throws IOException {
        String live = Example.live();
        assertThat(live).contains("\nline = 17\n");
        return write(live.replace("\nline = 17\n", "\nline = " + line + "\n"));
    }

    private int check(Path file) {
        return Main.commandLine()
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(err, true))
                .execute("check", file.toString());
    }

    private Path changed(String text, String instead) throws IOException {
        String example = Files.readString(EXAMPLE);
        assertThat(example).contains(text);
        return write(example.replace(text, instead));
    }

    private Path write(String text) throws IOException {
        return Files.writeString(folder.resolve("tunnel.toml"), text);
    }
}
