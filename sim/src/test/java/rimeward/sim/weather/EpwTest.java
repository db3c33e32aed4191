package rimeward.sim.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class EpwTest {
    @TempDir
    Path folder;

    /**
     * A file of made weather in the form of EnergyPlus "Auxiliary Programs": air counts the hours, radiation is 10 W/m²
     * times the hour.
     */
    private Path file(String perHour, List<LocalDate> days) throws IOException {
        var lines = new ArrayList<String>();
        lines.add("LOCATION,Hallin Rigg,-,XXX,made,000000,54.40,-2.50,1.0,300.0");
        for (String header : List.of("DESIGN CONDITIONS", "TYPICAL/EXTREME PERIODS", "GROUND TEMPERATURES")) {
            lines.add(header + ",0");
        }
        lines.add("HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0");
        lines.add("COMMENTS 1,made");
        lines.add("COMMENTS 2,made");
        lines.add("DATA PERIODS,1," + perHour + ",Data,Monday,1/1,12/31");
        for (LocalDate day : days) {
            for (int hour = 1; hour <= 24; hour++) {
                lines.add(row(day, hour));
            }
        }
        return Files.write(folder.resolve("hallin.EPW"), lines);
    }

    private static String row(LocalDate day, int hour) {
        return String.format(
                Locale.ROOT,
                "%d,%d,%d,%d,60,flags,%.1f,%.1f,80,97000,0,0,300,%d,0,0,0,0,0,0,180,%.1f,%d,5,20,2000,9,0,5,0.1,0,88,0.2,0,0",
                day.getYear(),
                day.getMonthValue(),
                day.getDayOfMonth(),
                hour,
                hour / 4.0,
                hour / 4.0 - 3,
                10 * hour,
                hour == 7 ? 999.0 : 2.5,
                5);
    }

    private static WeatherCursor at(WeatherSeries series, String utc) {
        var cursor = series.cursor();
        cursor.moveTo(Instant.parse(utc).getEpochSecond());
        return cursor;
    }

    @Test
    void readsHoursThatEndInLocalStandardTime() throws Exception {
        var path = file("1", List.of(LocalDate.of(2023, 1, 5), LocalDate.of(2023, 1, 6)));
        var imported = WeatherImporter.read(path, Span.ALL);
        // Hour 12 of the 5th ends at 12:00 local, 11:00 UTC.
        var weather = at(imported.series(), "2023-01-05T11:00:00Z");
        assertThat(weather.outsideAirC()).isCloseTo(3, within(1e-12));
        assertThat(weather.pressurePa()).isEqualTo(97_000);
        assertThat(weather.windMPerS()).isEqualTo(2.5);
        assertThat(weather.cloudFraction()).isEqualTo(0.5);
        // Radiation of hour 12 is its mean, so it stands at half past.
        assertThat(weather.globalRadiationWPerM2()).isCloseTo(125, within(1e-9));
        assertThat(imported.series().endEpochS())
                .isEqualTo(Instant.parse("2023-01-06T23:00:00Z").getEpochSecond());
        assertThat(String.join("\n", imported.report().lines()))
                .contains("wind (field 22, m/s): 46 used, 2 missing, 0 rejected, 2 bridged");
    }

    @Test
    void tellsATypicalYearAsOneWinter() throws Exception {
        var days = new ArrayList<LocalDate>();
        for (LocalDate day = LocalDate.of(2023, 1, 1); day.getYear() == 2023; day = day.plusDays(1)) {
            days.add(day.withYear(day.getMonthValue() == 2 ? 2011 : 2006));
        }
        var series = WeatherImporter.read(file("1", days), Span.ALL).series();
        assertThat(series.startEpochS())
                .isEqualTo(Instant.parse("2006-07-01T00:00:00Z").getEpochSecond());
        assertThat(series.endEpochS())
                .isEqualTo(Instant.parse("2007-06-30T23:00:00Z").getEpochSecond());
    }

    @Test
    void refusesWhatIsNoHourlyEpw() throws Exception {
        var quarterly = file("4", List.of(LocalDate.of(2023, 1, 5)));
        assertThatThrownBy(() -> WeatherImporter.read(quarterly, Span.ALL))
                .hasMessage(
                        quarterly + ": line 8, DATA PERIODS: must promise 1 record an hour; bring the file to hours");
        var other = Files.writeString(folder.resolve("other.epw"), "time,air\n");
        assertThatThrownBy(() -> WeatherImporter.read(other, Span.ALL))
                .hasMessage(other + ": is not an EPW file: line 1 must begin with LOCATION, and rows follow line 8");
    }
}
