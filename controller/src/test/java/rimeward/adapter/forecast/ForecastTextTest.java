package rimeward.adapter.forecast;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rimeward.core.outlook.Forecast;

/** What files and services say, and what of it is refused. */
class ForecastTextTest {
    private static final long MODIFIED_S = s("2026-01-10T11:00:00Z");

    @Test
    void aServicesFullReply() throws Unreadable {
        Forecast forecast = ServiceText.read(Samples.text("complete.json"), "api.met.no");
        assertThat(forecast.source()).isEqualTo("api.met.no");
        assertThat(forecast.issuedEpochS()).isEqualTo(s("2026-01-10T14:21:07Z"));
        assertThat(forecast.points()).hasSize(7);
        assertThat(forecast.points().get(5))
                .isEqualTo(new Forecast.Point(
                        s("2026-01-11T06:00:00Z"),
                        -6.1,
                        OptionalDouble.of(-6.7),
                        OptionalDouble.of(0.7),
                        OptionalDouble.of(0.086)));
    }

    @Test
    void theShortReplysDewPointFollowsFromItsHumidityOverWater() throws Unreadable {
        Forecast complete = ServiceText.read(Samples.text("complete.json"), "a");
        Forecast compact = ServiceText.read(Samples.text("compact.json"), "a");
        for (int i = 0; i < 7; i++) {
            double saidC = complete.points().get(i).dewPointC().orElseThrow();
            double foundC = compact.points().get(i).dewPointC().orElseThrow();
            assertThat(foundC).isCloseTo(saidC, within(0.1));
        }
    }

    @Test
    void theDewPointIsThatOfWeatherServices() throws Unreadable {
        // −5 °C and 90 % over water: −6.386 °C (checks.md, WMO-No. 8)
        assertThat(ServiceText.dewPointC("x", -5, 90)).isCloseTo(-6.386, within(0.005));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "-6.1 | -61 | air °C is -61.00; it must lie between -60.00 and 50.00",
                "-6.1 | 1e300 | air °C is 1.000e+300",
                "\"air_temperature\": -6.1, | | it has no air_temperature",
                "-6.1 | \"-6.1\" | air_temperature is no number",
                "95.3 | 0 | a relative humidity of 0.0 % is none",
                "wind_speed\": 0.7 | wind_speed\": -0.7 | wind m/s is -0.7000",
                "8.6, | 130, | cloud (0 to 1) is 1.300",
                "2026-01-11T06:00:00Z | 2026-01-10T06:00:00Z | not in order of time",
                "2026-01-11T12:00:00Z | 2027-01-11T12:00:00Z | look at the years",
                "2026-01-11T12:00:00Z | 2026-01-11 12:00 | a time with its offset is needed",
                "2026-01-11T12:00:00Z | 2026-02-30T12:00:00Z | a time with its offset is needed",
                "updated_at | updated | it has no updated_at",
                "\"timeseries\": [ | \"timeseries\": [], \"x\": [ | it has 0 points",
                "timeseries | series | it has no properties.timeseries",
                "celsius | fahrenheit | air_temperature is told in \"fahrenheit\", not in celsius",
            })
    void whatNoWeatherDoesIsRefused(String sound, String nonsense, String said) {
        String text = Samples.text("compact.json");
        assertThat(text).contains(sound);
        assertRefused(text.replace(sound, nonsense == null ? "" : nonsense), said);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "<html>502 Bad Gateway</html>", "null", "[]", "{\"properties\": 3}", "{}", "\"\u0000\""})
    void whatIsNoReplyIsRefused(String text) {
        assertRefused(text, "");
    }

    @Test
    void aReplyThatIsCutOffAnywhereIsRefused() {
        String text = Samples.text("complete.json").strip();
        for (int end = 0; end < text.length(); end++) {
            String part = text.substring(0, end);
            assertThatThrownBy(() -> ServiceText.read(part, "a")).isInstanceOf(Unreadable.class);
        }
    }

    @Test
    void whateverComesNothingBreaks() {
        SplittableRandom random = new SplittableRandom(11);
        for (String name : new String[] {"compact.json", "night.csv", "night.json"}) {
            byte[] sound = Samples.bytes(name);
            for (int i = 0; i < 2000; i++) {
                byte[] bytes = sound.clone();
                for (int changed = random.nextInt(4); changed >= 0; changed--) {
                    bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
                }
                try {
                    FileText.read(bytes, "a", MODIFIED_S)
                            .points()
                            .forEach(point -> assertThat(point.airC()).isBetween(-60.0, 50.0));
                } catch (Unreadable e) {
                    assertThat(e.why()).isNotBlank().doesNotContain("\n");
                }
            }
        }
    }

    @Test
    void aTable() throws Unreadable {
        Forecast forecast = file(Samples.text("night.csv"));
        assertThat(forecast.issuedEpochS()).isEqualTo(s("2026-01-10T12:00:00Z"));
        assertThat(forecast.points())
                .containsExactly(
                        point("2026-01-10T15:00:00Z", 1.5, -1.2, 2.4, 0.4),
                        point("2026-01-10T18:00:00Z", -1.5, -3.0, 1.2, 0),
                        new Forecast.Point(
                                s("2026-01-11T06:00:00Z"),
                                -6,
                                OptionalDouble.empty(),
                                OptionalDouble.of(0.8),
                                OptionalDouble.empty()));
    }

    @Test
    void aTableThatDoesNotSayWhenItWasIssuedIsAsOldAsItsFile() throws Unreadable {
        assertThat(file("time,air °C\n2026-01-10T15:00Z,1\n").issuedEpochS()).isEqualTo(MODIFIED_S);
    }

    @Test
    void otherUnitsAndASpreadsheetsWays() throws Unreadable {
        String header = "\ufefftime; air °F; humidity %; wind km/h; cloud oktas; rain mm";
        Forecast forecast = file(header + "\r\n2026-01-10T16:00+01:00; 39,2; 80; 7,2; 4; 0\r\n");
        Forecast.Point point = forecast.points().get(0);
        assertThat(point.epochS()).isEqualTo(s("2026-01-10T15:00:00Z"));
        assertThat(point.airC()).isCloseTo(4, within(1e-9));
        assertThat(point.dewPointC().orElseThrow())
                .isCloseTo(0.86, within(0.02)); // 4 °C, 80 %: Magnus' formula says 0.86
        assertThat(point.windMPerS().orElseThrow()).isCloseTo(2, within(1e-9));
        assertThat(point.cloudFraction().orElseThrow()).isCloseTo(0.5, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "time,air °C | air °C,time | line 4: time is \"1.5\"",
                "time,air °C | time,air | line 3: the column air needs its unit, one of °C, °F",
                "time,air °C | time,air K | needs its unit",
                "time,air °C | when,air °C | must name time and air with its unit",
                "dew-point °C | air °C | the header has air twice",
                "1.5,-1.2 | 15.1.2,-1.2 | line 4: air is \"15.1.2\", which is no number",
                "1.5,-1.2 | ,-1.2 | line 4: air is missing",
                "1.5,-1.2 | 1.5,3 | line 4: the dew point, 3.000 °C, is above the air, 1.500 °C",
                "1.5,-1.2 | 1,5,-1.2 | line 4: it has 6 cells, and the header 5",
                "1.5,-1.2 | NaN,-1.2 | which is no number",
                "2026-01-10T15:00Z | 10.1.2026 15:00 | line 4: time is \"10.1.2026 15:00\"; a time with its offset is needed",
                "issued: 2026-01-10T12:00Z | issued: noon | line 1: issued is \"noon\"",
            })
    void aTablesMistakesAreToldWithTheirLine(String sound, String mistake, String said) {
        String text = Samples.text("night.csv");
        assertThat(text).contains(sound);
        assertRefused(text.replace(sound, mistake), said);
    }

    @Test
    void pointsAsTheyAreHandedOver() throws Unreadable {
        Forecast forecast = file(Samples.text("night.json"));
        assertThat(forecast.issuedEpochS()).isEqualTo(s("2026-01-10T12:00:00Z"));
        assertThat(forecast.points()).hasSize(3);
        assertThat(forecast.points().get(1))
                .isEqualTo(new Forecast.Point(
                        s("2026-01-10T18:00:00Z"),
                        -1.5,
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty()));
        assertThat(forecast.points().get(2).cloudFraction()).hasValue(0.1);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "outsideC | outside_C | has a member \"outside_C\" that means nothing here",
                "spreadK\": 1.5 | spreadK\": -1 | spreadK must lie between 0 and 20",
                "\"issued\": \"2026-01-10T12:00:00Z\", | | it has no issued",
                "points | punkte | has a member \"punkte\"",
            })
    void pointsThatAreNoneAreRefused(String sound, String mistake, String said) {
        String text = Samples.text("night.json");
        assertThat(text).contains(sound);
        assertRefused(text.replace(sound, mistake == null ? "" : mistake), said);
    }

    @Test
    void aServicesReplyThatWasSavedIsReadToo() throws Unreadable {
        assertThat(file(Samples.text("compact.json")))
                .isEqualTo(ServiceText.read(Samples.text("compact.json"), "the file"));
    }

    @Test
    void whatIsTooLongOrInAnotherCharacterSetIsRefused() {
        assertThatThrownBy(() -> FileText.read(new byte[Plausible.MOST_BYTES + 1], "a", 0))
                .hasMessageContaining("longer than 1048576 bytes");
        assertThatThrownBy(() -> FileText.read("time,air °C".getBytes(StandardCharsets.ISO_8859_1), "a", 0))
                .hasMessageContaining("not UTF-8");
        assertRefused("time,air °C\n" + "2026-01-10T15:00Z,1\n".repeat(1001), "more than 1000 points");
    }

    private static void assertRefused(String text, String said) {
        assertThatThrownBy(() -> file(text)).isInstanceOf(Unreadable.class).hasMessageContaining(said);
    }

    private static Forecast file(String text) throws Unreadable {
        return FileText.read(text.getBytes(UTF_8), "the file", MODIFIED_S);
    }

    private static Forecast.Point point(String at, double airC, double dewC, double windMPerS, double cloud) {
        return new Forecast.Point(
                s(at), airC, OptionalDouble.of(dewC), OptionalDouble.of(windMPerS), OptionalDouble.of(cloud));
    }

    private static long s(String at) {
        return Instant.parse(at).getEpochSecond();
    }
}
