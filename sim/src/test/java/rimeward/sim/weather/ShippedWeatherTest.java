package rimeward.sim.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The files in {@code config/weather} read clean, and hold what its README promises. */
class ShippedWeatherTest {
    private static final Path FOLDER = Path.of("../config/weather");

    @ParameterizedTest
    @CsvSource({
        "cold-snap-2014-01.csv, -9.9, 5",
        "hard-cold-snap-2014-01.csv, -16.0, 5",
        "cold-night-1995-03-18.csv, -9.0, 0.9",
        "dry-frost-1995-03-18.csv, -5.0, 0.9",
        "mild-damp-fortnight-2013-01.csv, 1.1, 14",
        "mild-damp-day-1995-03-18.csv, 7.0, 0.9"
    })
    void readsClean(String name, double coldestC, double days) throws Exception {
        var imported = WeatherImporter.read(FOLDER.resolve(name), Span.ALL);
        var series = imported.series();
        assertThat(series.lowestOutsideAirC(series.startEpochS(), series.endEpochS()))
                .isCloseTo(coldestC, within(0.15));
        assertThat((series.endEpochS() - series.startEpochS()) / 86_400.0).isGreaterThan(days);
        assertThat(imported.report().columns()).allMatch(column -> column.rejected() == 0 && column.missing() == 0);
    }

    @Test
    void everyFileIsInTheReadme() throws Exception {
        String readme = Files.readString(FOLDER.resolve("README.md"));
        try (var files = Files.list(FOLDER)) {
            assertThat(files.map(file -> file.getFileName().toString()).filter(name -> name.endsWith(".csv")))
                    .isNotEmpty()
                    .allMatch(name -> readme.contains("`" + name + "`"));
        }
    }
}
