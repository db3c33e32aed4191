package rimeward.sim.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rimeward.sim.device.SensorVices;
import rimeward.sim.fault.Fault;
import rimeward.sim.fault.FaultKind;
import rimeward.sim.physics.CoverKind;
import rimeward.sim.physics.DryerParameters;
import rimeward.sim.world.GrowerRounds;

class ScenarioFileTest {
    private static final Path CONFIG = SmallNight.CONFIG;
    private static final String SMALL = SmallNight.TEXT;

    @TempDir
    private Path folder;

    private Scenario read(String text, Overrides asked) throws Exception {
        return ScenarioFile.read(Files.writeString(folder.resolve("night.toml"), text), asked);
    }

    private Scenario read(String text) throws Exception {
        return read(text, Overrides.NONE);
    }

    private void refused(String text, String... sentences) {
        assertThatThrownBy(() -> read(text))
                .isInstanceOf(BadInput.class)
                .satisfies(e -> assertThat(e.getMessage()).contains(sentences));
    }

    static List<Path> shipped() throws IOException {
        try (Stream<Path> files = Files.list(CONFIG.resolve("scenarios"))) {
            return files.sorted().toList();
        }
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void shippedScenariosAreComplete(Path file) throws Exception {
        Scenario scenario = ScenarioFile.read(file, Overrides.NONE);
        assertThat(file).hasFileName(scenario.id() + ".toml");
        assertThat(scenario.site().id()).isEqualTo("hallin-rigg");
        assertThat(scenario.gates().limits()).containsKey(Gate.MOST_GAP_S);
        assertThat(scenario.weather().endEpochS()).isGreaterThanOrEqualTo(scenario.startEpochS() + scenario.lengthS());
    }

    @Test
    void whatIsLeftOutIsAsThePlatesSayOrAsAtHallinRigg() throws Exception {
        Scenario scenario = read(SMALL);
        assertThat(scenario.startEpochS()).isEqualTo(1_390_842_000);
        assertThat(scenario.lengthS()).isEqualTo(86_400);
        assertThat(scenario.tickS()).isEqualTo(5);
        assertThat(scenario.machines().heater().stagesW()).containsExactly(1500.0, 1500.0);
        assertThat(scenario.machinesByHand().heater().dial().opensC())
                .isLessThan(scenario.machines().heater().dial().opensC());
        assertThat(scenario.machines().dryer()).isInstanceOfSatisfying(DryerParameters.Sorption.class, dryer -> {
            assertThat(dryer.body().fanW() + dryer.regeneratorW()).isEqualTo(550);
            assertThat(dryer.body().tankKg()).isEqualTo(5.5);
        });
        assertThat(scenario.sensors()).hasSize(4).containsOnly(SensorVices.usual());
        assertThat(scenario.rounds()).isEqualTo(GrowerRounds.none());
        assertThat(scenario.faults().faults()).isEmpty();
    }

    @Test
    void theTruthMayDifferFromTheSettings() throws Exception {
        Scenario scenario = read(SMALL + """
                [settings.heater]
                dead_time_s = 240
                [truth]
                door_contact = true
                [truth.tunnel]
                leak_cm2 = 600
                [[truth.cover]]
                kind = "single-film"
                area_m2 = 50
                [truth.heater]
                stages_W = [1400, 900]
                [[truth.sensor]]
                of = "outside"
                offset_K = 2
                [truth.rounds]
                first = "day 2 09:30"
                every = "12h"
                """);
        assertThat(scenario.site().heater().deadTimeS()).isEqualTo(240);
        assertThat(scenario.doorContact()).isTrue();
        assertThat(scenario.tunnel().leakCm2()).isEqualTo(600);
        assertThat(scenario.tunnel().cover())
                .singleElement()
                .satisfies(panel -> assertThat(panel.kind()).isEqualTo(CoverKind.SINGLE_FILM));
        assertThat(scenario.machines().heater().stagesW()).containsExactly(1400.0, 900.0);
        assertThat(scenario.sensors().get(3).offsetK()).isEqualTo(2);
        assertThat(scenario.rounds()).isEqualTo(new GrowerRounds(21.5 * 3600, 12 * 3600));
    }

    @Test
    void faultsAreTimedByTheReplaysClock() throws Exception {
        Scenario scenario = read(SMALL + """
                [[fault]]
                at = "02:14"
                kind = "heater-fuse"
                lasts = "45m"
                [[fault]]
                at = "day 1 13:00"
                kind = "sensor-offset"
                of = "north-bench"
                by_K = -3
                """);
        assertThat(scenario.faults().faults())
                .containsExactly(
                        new Fault(3600, FaultKind.SENSOR_OFFSET, "north-bench", Double.POSITIVE_INFINITY, -3),
                        Fault.of(14 * 3600 + 14 * 60, FaultKind.HEATER_FUSE, 45 * 60));
    }

    @Test
    void ordersAreTimedByTheReplaysClock() throws Exception {
        Scenario scenario = read(SMALL + """
                [[order]]
                at = "02:14"
                kind = "stand-down"
                machine = "heater-1"
                for = "45m"
                """);
        assertThat(scenario.orders()).containsExactly(new StandDownAt(14 * 3600 + 14 * 60, "heater-1", 2700));
    }

    @Test
    void anOrderIsCheckedAgainstTheSite() {
        refused(
                SMALL + """
                [[order]]
                at = "day 1 08:00"
                kind = "stand-down"
                machine = "heater-7"
                for = "5h"
                [[order]]
                at = "13:00"
                kind = "stand-down"
                machine = "heater-1"
                for = "5h"
                """,
                "order[1].machine = \"heater-7\" must be one of",
                "order[1].at = \"day 1 08:00\" is before the start",
                "order[2].for = \"5h\" is longer than a machine may stand down; name 4 hours or less");
    }

    @Test
    void everythingThatIsWrongIsToldAtOnce() {
        String text =
                (SMALL + """
                [settings.targets]
                hot_C = 3
                [[fault]]
                at = "day 1 08:00"
                kind = "heater-fuze"
                [[fault]]
                at = "day 1 08:00"
                kind = "sensor-lost"
                of = "south-bench"
                [truth.tunnel]
                leak_cm3 = 1
                """).replace("length = \"1d\"", "length = \"a day\"").replace("title", "tittle");
        refused(
                text,
                "night.toml:1: tittle = \"A night\" is not a known key; did you mean title?",
                "night.toml:6: time.length = \"a day\" must be a length of time",
                "night.toml:11: targets.hot_C = 3 must lie between 10 and 45; raise it to at least 10",
                "truth.tunnel.leak_cm3 = 1 is not a known key; did you mean leak_cm2?");
    }

    @Test
    void aFaultIsCheckedAgainstTheSite() {
        refused(
                SMALL + """
                [[fault]]
                at = "day 1 08:00"
                kind = "heater-fuze"
                [[fault]]
                at = "day 1 08:00"
                kind = "heater-fuse"
                [[fault]]
                at = "13:00"
                kind = "sensor-lost"
                of = "nort-bench"
                """,
                "night.toml:12: fault[1].kind = \"heater-fuze\" must be one of",
                "did you mean \"heater-fuse\"?",
                "night.toml:14: fault[2].at = \"day 1 08:00\" is before the start, 2014-01-27 12:00",
                "night.toml:19: fault[3].of = \"nort-bench\" must be one of",
                "did you mean \"north-bench\"?");
    }

    @Test
    void aBenchOfTheSettingsMustExist() {
        refused(SMALL + """
                [[truth.bench]]
                name = "middle bench"
                offset_K = 0
                [[truth.bench]]
                name = "door bench"
                offset_K = 0
                """, "has none named \"north bench\", where the settings hang sensor north-bench");
    }

    @Test
    void missingFilesAreNamed() {
        refused(
                SMALL.replace("tunnel.toml", "tunel.toml"),
                "night.toml:3: settings_file = ",
                "names a file that is not there",
                "tunel.toml");
        refused(SMALL.replace("cold-snap-2014-01", "warm-snap"), "warm-snap.csv");
    }

    @Test
    void weatherThatDoesNotReachFarEnoughIsRefused() {
        refused(SMALL.replace("\"1d\"", "\"30d\""), "is complete from", "asked for from 2014-01-27T17:00:00Z");
    }

    @Test
    void theCommandLineMayAskForAnotherTime() throws Exception {
        LocalDateTime from = LocalDateTime.of(2014, 1, 28, 18, 0);
        Scenario scenario = read(SMALL, new Overrides(null, from, from.plusHours(3), 7L));
        assertThat(scenario.startEpochS()).isEqualTo(1_390_842_000 + 30 * 3600);
        assertThat(scenario.lengthS()).isEqualTo(3 * 3600);
        assertThat(scenario.seed()).isEqualTo(7);
        assertThatThrownBy(() -> read(SMALL, new Overrides(null, from, from.minusHours(3), null)))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("ask for an end after the start");
    }

    @Test
    void otherWeatherIsUsedWholeUnlessATimeIsAskedFor() throws Exception {
        Path other = CONFIG.resolve("weather/cold-night-1995-03-18.csv");
        Scenario whole = read(SMALL, new Overrides(other, null, null, null));
        assertThat(whole.startEpochS()).isEqualTo(795_484_800);
        assertThat(whole.lengthS()).isEqualTo(23 * 3600);
        LocalDateTime from = LocalDateTime.of(1995, 3, 17, 23, 0);
        Scenario part = read(SMALL, new Overrides(other, from, null, null));
        assertThat(part.startEpochS()).isEqualTo(795_484_800 + 4 * 3600);
        assertThat(part.lengthS()).isEqualTo(19 * 3600);
    }

    @Test
    void aRecipeMakesTheWeather() throws Exception {
        String made =
                SMALL.substring(0, SMALL.indexOf("[weather]")) + "[weather]\nrecipe = \"upland-winter\"\nmean_C = -2\n";
        Scenario one = read(made, new Overrides(null, null, null, 1L));
        Scenario two = read(made, new Overrides(null, null, null, 2L));
        assertThat(one.weather().provenance()).startsWith("made");
        assertThat(one.weather().sample(50)).isNotEqualTo(two.weather().sample(50));
        assertThat(read(made, new Overrides(null, null, null, 1L)).weather().sample(50))
                .isEqualTo(one.weather().sample(50));
    }

    @Test
    void anyTableCanBeMapped() throws Exception {
        Files.writeString(folder.resolve("table.csv"), """
                year,month,day,hour,temp,humid,speed
                2014,1,27,11,14,70,5
                2014,1,27,23,12,75,5
                2014,1,28,11,10,80,NA
                2014,1,28,13,12,80,5
                """);
        String mapped = SMALL.substring(0, SMALL.indexOf("[weather]")) + """
                [weather]
                file = "table.csv"
                latitude_deg = 40.7
                longitude_deg = -74
                altitude_m = 10
                [weather.columns]
                zone = "-05:00"
                time = "year, month, day, hour as y M d H"
                air = "temp °F"
                humidity = "humid %"
                wind = "speed mph"
                assume_cloud = "0.5 fraction"
                longest_gap = "1d"
                """;
        Scenario scenario = read(mapped);
        assertThat(scenario.weather().lowestOutsideAirC(scenario.startEpochS(), scenario.startEpochS() + 86_400))
                .isBetween(-12.3, -12.1);
        refused(
                mapped.replace("temp °F", "temp °R"),
                "weather.columns.air = \"temp °R\" is refused",
                "is not a unit here");
    }
}
