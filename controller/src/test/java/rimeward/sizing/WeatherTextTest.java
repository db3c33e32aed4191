package rimeward.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WeatherTextTest {
    private static final List<String> EPW_HEAD = List.of(
            "LOCATION,Hallin Rigg,-,GBR,made,000000,54.40,-2.10,1.0,310",
            "DESIGN CONDITIONS,0",
            "TYPICAL/EXTREME PERIODS,0",
            "GROUND TEMPERATURES,0",
            "HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0",
            "COMMENTS 1,made",
            "COMMENTS 2,made",
            "DATA PERIODS,1,1,Data,Sunday,1/1,12/31");

    private static Weather read(String... lines) throws Refused {
        return WeatherText.read(List.of(lines).iterator());
    }

    @Test
    void readings() throws Refused {
        Weather weather = read(
                "\uFEFF# a comment",
                "",
                "time,humidity %,\"air °C\"",
                "2026-01-01T00:00Z,90,-1.5",
                "2026-01-01 02:00+01:00,90,-2",
                "2026-01-01T02:00:00Z,90,",
                "2026-01-01T03:00:00Z,90,999",
                "2026-01-01T04:00,90,0.5");
        assertThat(weather.form()).isEqualTo(Weather.Form.READINGS);
        assertThat(weather.course().size()).isEqualTo(3);
        assertThat(weather.course().epochS(1))
                .isEqualTo(Instant.parse("2026-01-01T01:00:00Z").getEpochSecond());
        assertThat(weather.course().lowestC()).isEqualTo(-2);
        assertThat(weather.unmeasured()).isEqualTo(1);
        assertThat(weather.impossible()).isEqualTo(1);
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({"23, °F, -5", "268.15, K, -5", "-5, °C, -5"})
    void otherUnits(String value, String unit, double expectedC) throws Refused {
        Weather weather = read("time,air " + unit, "2026-01-01T00:00Z," + value, "2026-01-01T01:00Z," + value);
        assertThat(weather.course().airC(0)).isCloseTo(expectedC, within(1e-9));
    }

    @Test
    void dailyExtremesAreReachedAndJoined() throws Refused {
        AirCourse course = read(
                        "time,lowest-air °C,highest-air °C",
                        "2026-01-01T00:00-05:00,-4,6",
                        "2026-01-02T00:00-05:00,-8,0")
                .course();
        assertThat(course.size()).isEqualTo(49);
        assertThat(course.epochS(0))
                .isEqualTo(Instant.parse("2026-01-01T05:00:00Z").getEpochSecond());
        assertThat(course.airC(7)).isEqualTo(-4);
        assertThat(course.airC(15)).isEqualTo(6);
        assertThat(course.airC(23)).isCloseTo(-1, within(1e-9)); // half-way of 16 h from 6 down to −8
        assertThat(course.airC(31)).isEqualTo(-8);
        assertThat(course.airC(39)).isEqualTo(0);
        assertThat(course.spanS()).isEqualTo(2 * 86_400);
    }

    @Test
    void aTypicalYearHasNoGapWhereFebruaryEnds() throws Refused {
        List<String> lines = new ArrayList<>(EPW_HEAD);
        for (String day : List.of("1998,2,28", "2003,3,1")) {
            for (int hour = 1; hour <= 24; hour++) {
                lines.add(String.format(Locale.ROOT, "%s,%d,60,A7,%s,1,2", day, hour, hour == 5 ? "99.9" : "-3.5"));
            }
        }
        Weather weather = WeatherText.read(lines.iterator());
        assertThat(weather.form()).isEqualTo(Weather.Form.EPW);
        assertThat(weather.unmeasured()).isEqualTo(2);
        assertThat(weather.course().spanS()).isEqualTo(47 * 3600);
        assertThat(weather.course().airC(0)).isEqualTo(-3.5);
    }

    @Test
    void everyBadLineIsNamedWithWhatToDo() {
        assertThatThrownBy(() -> read(
                        "time,air °C",
                        "2026-01-01T00:00Z,1",
                        "2026-01-01T01:00Z,NaN",
                        "2026-01-01T00:30Z,4",
                        "yesterday,4",
                        "2026-01-01T05:00Z,4,5"))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("line 3, column \"air °C\": \"NaN\" is no number; write digits")
                .hasMessageContaining(
                        "line 4, column \"time\": 2026-01-01T00:30Z is not later than the row above; sort")
                .hasMessageContaining("line 5, column \"time\": \"yesterday\" is no time; write it as")
                .hasMessageContaining("line 6 has 3 cells, the header 2; write a point");
    }

    @Test
    void manyBadLinesAreCounted() {
        List<String> lines = new ArrayList<>(List.of("time,air °C"));
        for (int i = 0; i < 100; i++) {
            lines.add("x,1");
        }
        assertThatThrownBy(() -> WeatherText.read(lines.iterator()))
                .isInstanceOf(Refused.class)
                .hasMessageEndingWith("and 95 more lines like these");
    }

    @Test
    void whatIsNoWeatherIsRefused() {
        assertThatThrownBy(() -> read()).hasMessageContaining("it is empty; it needs a header");
        assertThatThrownBy(() -> read("id,title", "1,x"))
                .hasMessageContaining("line 1 must be a header that names a column \"time\"")
                .hasMessageContaining("it reads \"id,title\"");
        assertThatThrownBy(() -> read("time,air °C", "2026-01-01T00:00Z,1"))
                .hasMessageContaining("fewer than two rows");
        assertThatThrownBy(() -> read("time,lowest-air °C,highest-air °C", "2026-01-01,5,1"))
                .hasMessageContaining("line 2: the lowest, 5, is above the highest, 1; exchange them");
        assertThatThrownBy(() -> read("LOCATION,x")).hasMessageContaining("ninth field is no time zone");
        assertThatThrownBy(() -> read(EPW_HEAD.get(0), "x")).hasMessageContaining("begins with eight lines of header");
    }

    @Test
    void severalWintersAndFilesFullOfHolesAreRefused() {
        assertThatThrownBy(() -> read("time,lowest-air °C,highest-air °C", "2024-01-01,0,1", "2026-01-01,0,1"))
                .hasMessageContaining("at most 400 make one winter");
        assertThatThrownBy(
                        () -> read("time,air °C", "2026-01-01T00:00Z,1", "2026-01-01T01:00Z,1", "2026-01-02T01:00Z,1"))
                .hasMessageContaining("gaps of more than 3 hours make up 96 % of its time");
    }
}
