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
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rimeward.adapter.config.SiteSettings;
import rimeward.adapter.journal.JournalLimits;
import rimeward.adapter.journal.SqliteJournal;
import rimeward.core.ControlCycle;
import rimeward.core.ControlState;
import rimeward.core.Stepped;
import rimeward.core.decision.DutyLaw;
import rimeward.core.outlook.Outlook;
import rimeward.core.outlook.PlanPromise;
import rimeward.core.tunnel.Figure;
import rimeward.fixture.Frames;
import rimeward.site.Site;

final class TonightCommandTest {
    private static final String SETTINGS =
            Path.of("..", "config", "tunnel.toml").toString();

    @TempDir
    private Path folder;

    private StringWriter out = new StringWriter();
    private StringWriter err = new StringWriter();
    private Path forecast = Path.of("none");

    @BeforeEach
    void aForecast() throws IOException {
        forecast = write(
                "time,air °C,dew-point °C",
                "2026-01-10T16:00Z,3,1",
                "2026-01-10T22:00Z,-1,-2.5",
                "2026-01-11T06:00:00+00:00,-4,",
                "2026-01-11T09:00,-2,-3");
    }

    private Path write(String... lines) throws IOException {
        Path file = folder.resolve("forecast.csv");
        return Files.write(file, List.of(lines), StandardCharsets.UTF_8);
    }

    private int run(String... args) {
        out = new StringWriter();
        err = new StringWriter();
        return Main.commandLine()
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(err))
                .execute(args);
    }

    private int tonight(String... more) {
        List<String> args = new ArrayList<>(List.of("tonight", SETTINGS, "--data", folder.toString()));
        args.addAll(List.of(more));
        return run(args.toArray(new String[0]));
    }

    @Test
    void aNightIsPlannedFromAForecast() {
        assertThat(tonight("--forecast", forecast.toString(), "--at", "2026-01-10T16:10Z", "--inside-C", "8"))
                .isZero();
        assertThat(out.toString())
                .contains("the night from Sat 10 Jan 16:10 to Sun 11 Jan 09:00 by the clock of Europe/London")
                .contains("This plan is a guess: the tunnel is taken as the settings describe it")
                .contains("The floor of 4.0 °C will")
                .contains("kWh, give or take")
                .contains("GBP")
                .contains("16:10 +00:00", "08:00 +00:00")
                .contains("weather by the forecast of forecast.csv, as it stands")
                .contains("The heater alone on a plain thermostat would take");
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void anInsideThatNobodyToldOfIsTakenToBeHeldForTheColdestBench() {
        assertThat(tonight("--forecast", forecast.toString(), "--at", "2026-01-10T16:10Z"))
                .isZero();
        assertThat(out.toString())
                .contains("the chance that it cannot be held is below 1 %")
                .contains("assumed: the air inside is at 6.0 °C (say it with --inside-C)");
    }

    @Test
    void aNightTooColdIsAnsweredWithOne() {
        String[] cold = {"--outside-C", "-20", "--inside-C", "5", "--at", "2026-01-10T16:10Z"};
        assertThat(tonight(cold)).isEqualTo(1);
        assertThat(out.toString())
                .contains("will probably not hold")
                .contains("nobody has forecast the weather")
                .contains("Before dark: ");
    }

    @Test
    void badInputIsNamedWithItsRemedy() throws IOException {
        assertThat(tonight("--at", "2026-01-10T16:10Z")).isEqualTo(2);
        assertThat(err.toString())
                .contains("nobody knows how cold it is outside")
                .contains("--outside-C");
        assertThat(tonight("--at", "teatime")).isEqualTo(2);
        assertThat(tonight("--outside-C", "1", "--inside-C", "99")).isEqualTo(2);
        assertThat(err.toString()).contains("the air inside, °C, is 99.0; it must lie between");
        assertThat(tonight("--forecast", folder.resolve("gone.csv").toString())).isEqualTo(2);
        assertThat(err.toString()).contains("gone.csv: cannot be read");
        refused("2026-01-10T16:00Z,3,1,7", ":2: has 4 cells");
        refused("2026-01-10T16:00Z,three", ":2: air is \"three\"; give °C between");
        refused("2026-01-10T16:00Z,93", ":2: air is \"93\"");
        refused("10 January,3", ":2: has the time \"10 January\"; write it as");
        refused("2026-01-10T16:00Z,3\n2026-01-10T16:00Z,2", ":3: is not later than the line before");
        refused("", "holds no line of weather");
        assertThat(tonight(
                        "--forecast",
                        write("time,air °F", "2026-01-10T16:00Z,33").toString()))
                .isEqualTo(2);
        assertThat(err.toString()).contains(":1: is in °F; give °C");
    }

    private void refused(String line, String why) throws IOException {
        String file = write("time,air °C", line).toString();
        assertThat(tonight("--forecast", file, "--at", "2026-01-10T15:00Z")).isEqualTo(2);
        assertThat(err.toString()).contains(why).hasLineCount(1);
        assertThat(out.toString()).isEmpty();
    }

    @Test
    void programsGetTheSamePlanAsJson() throws IOException {
        tonight("--forecast", forecast.toString(), "--at", "2026-01-10T16:10Z", "--json");
        assertThat(out.toString())
                .startsWith(
                        "{\"site\":\"hallin-rigg\",\"made\":\"2026-01-10T16:10:00Z\",\"ends\":\"2026-01-11T09:00:00Z\"")
                .contains("\"guess\":true", "\"alternatives\":[{\"way\":\"thermostat\"", "\"chanceCold\":")
                .hasLineCount(1);
    }

    @Test
    void theRecordSaysHowTheTunnelIsNowAndHoldsThePlanToAccount() {
        Site site = SiteSettings.read(Path.of(SETTINGS));
        ControlCycle cycle = new ControlCycle(site, new DutyLaw());
        ControlState state = cycle.start();
        Frames frames = Frames.steady(6.5, 90).outside(1);
        Clock clock = Clock.fixed(Instant.EPOCH, ZoneOffset.UTC);
        try (SqliteJournal journal = SqliteJournal.open(
                folder.resolve("record.db"),
                site,
                ZoneOffset.UTC,
                clock,
                JournalLimits.usual(),
                alert -> {},
                trouble -> {})) {
            for (int i = 0; i < 720; i++) {
                Stepped stepped = cycle.step(
                        state, frames.jitter((i % 5) * 0.01).after(5), new Outlook.Night(1, -3, 1.5, 50_000 - i * 5.0));
                journal.record(stepped, List.of());
                state = stepped.next();
            }
            journal.keep(promise());
        }
        assertThat(tonight("--at", "2025-11-24T17:05Z")).isZero();
        assertThat(out.toString())
                .contains("weather by the forecast of the service")
                .contains("Outside falls to -3.0 °C")
                .doesNotContain("the air inside is at");
        tonight("--at", "2025-11-25T17:05Z", "--outside-C", "2");
        assertThat(out.toString()).as("that record is a day old").contains("the air inside is at 5.5 °C");
        assertThat(run("record", folder.resolve("record.db").toString(), "nights"))
                .isZero();
        assertThat(out.toString()).contains("what came less what was planned: outside +4.0 K, bench +1.5 K");
    }

    private static PlanPromise promise() {
        Figure sure = new Figure(0, 0);
        return new PlanPromise(
                LocalDate.of(2025, 11, 24),
                1_764_000_000,
                4,
                new Figure(-3, 1),
                new Figure(5, 0.2),
                sure,
                sure,
                sure,
                0.02,
                false,
                0,
                0,
                0);
    }
}
