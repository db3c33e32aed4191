package rimeward.sim.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rimeward.air.MoistAir;
import rimeward.air.RelativeHumidity;

class WeatherImporterTest {
    private static final Place HILL = new Place(54.4, -2.5, 300);
    private static final String HEADER = "time,air °C,dew-point °C,wind m/s,cloud oktas";

    @TempDir
    Path folder;

    private Path file(String... lines) throws IOException {
        return Files.writeString(folder.resolve("hill.csv"), String.join("\n", lines) + "\n");
    }

    private static long epochS(String utc) {
        return Instant.parse(utc).getEpochSecond();
    }

    private static WeatherCursor at(WeatherSeries series, String utc) {
        var cursor = series.cursor();
        cursor.moveTo(epochS(utc));
        return cursor;
    }

    private static List<String> faultsOf(ThrowingRead read) {
        var thrown = assertThatExceptionOfType(WeatherFileException.class).isThrownBy(read::run);
        return thrown.actual().faults();
    }

    private interface ThrowingRead {
        void run() throws WeatherFileException;
    }

    @Test
    void readsATableThatExplainsItself() throws Exception {
        var path = file(
                "# place: latitude 54.4, longitude -2.5, altitude 300 m",
                HEADER + ",pressure hPa",
                "2024-01-05T00:00Z,2,-1,3,4,970",
                "2024-01-05T01:00Z,-4,-5,1,8,972");
        var weather = at(WeatherImporter.read(path, Span.ALL).series(), "2024-01-05T00:30:00Z");
        assertThat(weather.outsideAirC()).isCloseTo(-1, within(1e-12));
        assertThat(weather.windMPerS()).isCloseTo(2, within(1e-12));
        assertThat(weather.pressurePa()).isCloseTo(97_100, within(1e-9));
        assertThat(weather.cloudFraction()).isCloseTo(0.75, within(1e-12));
        assertThat(weather.globalRadiationWPerM2()).isZero();
        assertThat(weather.skyC()).isLessThan(-3);
    }

    @Test
    void readsAForeignTableThroughAColumnMap() throws Exception {
        var path = file(
                "origin;yr;mo;dy;hr;temp;humid;speed;sky;slp;sun",
                "A;2024;1;5;12;50;80;10;100;1013.25;120",
                "B;2024;1;5;12;99;1;1;1;1;1",
                "A;2024;1;5;13;41;M;20;0;1013.25;60",
                "A;2024;1;5;14;32;90;20;0;1013.25;0");
        var map = ColumnMap.builder()
                .separator(';')
                .time("yr, mo, dy, hr as y M d H")
                .zone("+01:00")
                .only("origin = A")
                .missing("M")
                .column("air", "temp °F")
                .column("humidity", "humid %")
                .column("wind", "speed mph")
                .column("cloud", "sky %")
                .column("sea-level-pressure", "slp hPa")
                .column("radiation", "sun W/m²")
                .build();
        var imported = WeatherImporter.read(path, map, HILL, Span.ALL);
        var noon = at(imported.series(), "2024-01-05T11:00:00Z");
        assertThat(noon.outsideAirC()).isCloseTo(10, within(1e-9));
        assertThat(RelativeHumidity.overWaterPercent(10, noon.vapourPa())).isCloseTo(80, within(1e-4));
        assertThat(noon.windMPerS()).isCloseTo(4.4704, within(1e-9));
        assertThat(noon.cloudFraction()).isEqualTo(1);
        assertThat(noon.pressurePa()).isCloseTo(MoistAir.pressurePa(300), within(1e-6));
        assertThat(noon.globalRadiationWPerM2()).isEqualTo(120);
        assertThat(imported.report().rowsOfOthers()).isEqualTo(1);
        assertThat(imported.report().lines())
                .anyMatch(line -> line.contains("humidity (humid, %): 2 used, 1 missing, 0 rejected, 1 bridged"));
    }

    @Test
    void everyUnitMeansTheSame() throws Exception {
        for (String air : List.of("air °C/-3.5", "air °F/25.7", "air K/269.65")) {
            for (String wind : List.of("wind m/s/10", "wind km/h/36", "wind mph/22.3694", "wind kn/19.4384")) {
                String header = "time," + air.replaceAll("/[^/]*$", "") + ",humidity %,"
                        + wind.replaceAll("/[^/]*$", "") + ",cloud tenths";
                String row = "," + air.replaceAll(".*/", "") + ",70," + wind.replaceAll(".*/", "") + ",5";
                var path = file(header, "2024-01-05T00:00Z" + row, "2024-01-05T01:00Z" + row);
                var weather = at(WeatherImporter.read(path, HILL, Span.ALL).series(), "2024-01-05T00:10:00Z");
                assertThat(weather.outsideAirC()).isCloseTo(-3.5, within(1e-9));
                assertThat(weather.windMPerS()).isCloseTo(10, within(1e-4));
            }
        }
    }

    @Test
    void rejectsAndCountsWhatCannotBeTrue() throws Exception {
        var rows = new java.util.ArrayList<String>(List.of(HEADER));
        for (int h = 0; h < 24; h++) {
            String air = h == 5 ? "93" : h == 9 ? "-25" : "1";
            String dew = h == 15 ? "1.5" : "0";
            String wind = h == 20 ? "468" : "2";
            rows.add(String.format(java.util.Locale.ROOT, "2024-01-05T%02d:00Z,%s,%s,%s,8", h, air, dew, wind));
        }
        var imported = WeatherImporter.read(file(rows.toArray(new String[0])), map(2), HILL, Span.ALL);
        var lines = String.join("\n", imported.report().lines());
        assertThat(lines)
                .contains("line 7: 93.00 °C, outside -55.00 °C…55.00 °C")
                .contains("line 11: -25.00 °C, a spike: before and after it 1.000 °C and 1.000 °C")
                .contains("line 17: 1.500 °C, above air of the same row")
                .contains("line 22: 468.0 m/s, outside 0.000 m/s…60.00 m/s");
        assertThat(at(imported.series(), "2024-01-05T05:00:00Z").outsideAirC()).isEqualTo(1);
        for (ColumnReport column : imported.report().columns()) {
            assertThat(column.used() + column.missing() + column.rejected())
                    .as(column.column())
                    .isEqualTo(24);
        }
    }

    /** The map of {@link #HEADER} with another longest gap. */
    private static ColumnMap map(int longestGapH) {
        return ColumnMap.builder()
                .longestGapS(longestGapH * 3600)
                .column("air", "air °C °C")
                .column("dew-point", "dew-point °C °C")
                .column("wind", "wind m/s m/s")
                .column("cloud", "cloud oktas oktas")
                .build();
    }

    @Test
    void airNeverHoldsMoreVapourThanItCan() throws Exception {
        var path = file(HEADER, "2024-01-05T00:00Z,10,10,2,8", "2024-01-05T03:00Z,-10,-10,2,8");
        var series = WeatherImporter.read(path, HILL, Span.ALL).series();
        for (int i = 0; i < series.samples(); i++) {
            var sample = series.sample(i);
            assertThat(RelativeHumidity.overWaterPercent(sample.outsideAirC(), sample.vapourPa()))
                    .isLessThan(100.0001);
        }
    }

    @Test
    void bridgesShortGapsAndNamesLongOnes() throws Exception {
        var path = file(
                HEADER,
                "2024-01-05T00:00Z,0,0,2,8",
                "2024-01-05T01:00Z,NA,,2,8",
                "2024-01-05T02:00Z,2,0,2,8",
                "2024-01-05T07:00Z,3,0,2,8");
        assertThat(faultsOf(() -> WeatherImporter.read(path, HILL, Span.ALL)))
                .hasSize(4)
                .first()
                .isEqualTo(
                        path + ": lines 4 to 5, column air °C: no usable value for 5.0 h from 2024-01-05T02:00:00Z; the"
                                + " limit is 3.0 h; fill the gap, allow a longer one, or ask for a time without it");
        var until2 = new Span(epochS("2024-01-05T00:00:00Z"), epochS("2024-01-05T02:00:00Z"));
        assertThat(at(WeatherImporter.read(path, HILL, until2).series(), "2024-01-05T01:00:00Z")
                        .outsideAirC())
                .isEqualTo(1);
        assertThat(WeatherImporter.read(path, map(5), HILL, Span.ALL).series().endEpochS())
                .isEqualTo(epochS("2024-01-05T07:00:00Z"));
    }

    @Test
    void saysWhatItAssumedAndDidNotUse() throws Exception {
        var path = file("time,air °C,humidity %,gust m/s", "2024-01-05T00:00Z,1,90,9", "2024-01-05T01:00Z,1,90,9");
        var map = ColumnMap.builder()
                .column("air", "air °C °C")
                .column("humidity", "humidity % %")
                .assume("wind", "2 m/s")
                .assume("cloud", "50 %")
                .build();
        var imported = WeatherImporter.read(path, map, HILL, Span.ALL);
        assertThat(imported.report().notes())
                .contains("wind is not in the file: 2 m/s assumed throughout")
                .contains("cloud is not in the file: 50 % assumed throughout")
                .contains("columns not used: gust m/s")
                .anyMatch(note -> note.startsWith("radiation is not in the file"))
                .anyMatch(note -> note.startsWith("pressure is not in the file"));
        assertThat(at(imported.series(), "2024-01-05T00:00:00Z").cloudFraction())
                .isEqualTo(0.5);
    }

    @Test
    void tellsEveryFaultOfAFileAtOnce() throws Exception {
        var path = file(
                HEADER,
                "2024-01-05T00:00Z,1,0,2,8",
                "2024-01-05T01:00Z,1,0,2",
                "yesterday,1,0,2,8",
                "2024-01-05T02:00Z,1,wet,2,8",
                "2024-01-05T01:30Z,1,0,2,8",
                "2024-01-05T02:00Z,1,0,2,8");
        assertThat(faultsOf(() -> WeatherImporter.read(path, HILL, Span.ALL)))
                .satisfiesExactly(
                        fault -> assertThat(fault)
                                .isEqualTo(
                                        path + ": line 3, the row has 4 cells, the header 5; mend or remove the row"),
                        fault -> assertThat(fault).contains("line 4, time \"yesterday\" is not understood"),
                        fault -> assertThat(fault)
                                .isEqualTo(path
                                        + ": line 5, column dew-point °C: \"wet\" is not a number; correct it, or name"
                                        + " it as a missing mark"),
                        fault -> assertThat(fault).contains("line 6, time \"2024-01-05T01:30Z\" is before"));
    }

    @Test
    void suspectsTheUnitWhenMuchIsRejected() throws Exception {
        var path = file(
                HEADER,
                "2024-01-05T00:00Z,59,0,2,8",
                "2024-01-05T01:00Z,60,0,2,8",
                "2024-01-05T02:00Z,61,0,2,8",
                "2024-01-05T03:00Z,58,0,2,8",
                "2024-01-05T04:00Z,50,0,2,8");
        assertThat(faultsOf(() -> WeatherImporter.read(path, HILL, Span.ALL)))
                .singleElement()
                .asString()
                .contains("column air °C: 4 of 5 values cannot be true, first line 2: 59.00 °C")
                .contains("is the unit right?");
    }

    @Test
    void namesWhatAFileLacks() throws Exception {
        assertThat(faultsOf(() -> WeatherImporter.read(folder.resolve("none.csv"), HILL, Span.ALL)))
                .containsExactly(folder.resolve("none.csv")
                        + ": there is no such file; check its name and where it is looked for");
        var bare = file("time,air °C", "2024-01-05T00:00Z,1");
        assertThat(faultsOf(() -> WeatherImporter.read(bare, HILL, Span.ALL)))
                .containsExactly(
                        bare + ": tells no dew-point (or humidity); name its column",
                        bare + ": tells no wind; name its column, or assume a value",
                        bare + ": tells no cloud; name its column, or assume a value");
        assertThat(faultsOf(() -> WeatherImporter.read(bare, Span.ALL)))
                .singleElement()
                .asString()
                .contains("does not tell its place");
        var other = file("when,temp", "2024-01-05T00:00Z,1");
        assertThat(faultsOf(() -> WeatherImporter.read(other, map(3), HILL, Span.ALL)))
                .contains(other + ": has no column \"air °C\"; its columns are when, temp");
        var empty = file(HEADER);
        assertThat(faultsOf(() -> WeatherImporter.read(empty, HILL, Span.ALL)))
                .singleElement()
                .asString()
                .contains("holds no rows");
    }

    @Test
    void refusesATimeThatTheFileDoesNotCover() throws Exception {
        var path = file(HEADER, "2024-01-05T00:00Z,1,0,2,8", "2024-01-05T01:00Z,1,0,2,8");
        var night = new Span(epochS("2024-01-05T00:00:00Z"), epochS("2024-01-05T06:00:00Z"));
        assertThat(faultsOf(() -> WeatherImporter.read(path, HILL, night)))
                .containsExactly(
                        path + ": is complete from 2024-01-05T00:00:00Z to 2024-01-05T01:00:00Z, but asked for from"
                                + " 2024-01-05T00:00:00Z to 2024-01-05T06:00:00Z; ask for a time within");
    }

    @Test
    void keepsTheFirstOfRowsThatRepeatATime() throws Exception {
        var path = file(HEADER, "2024-01-05T00:00Z,1,0,2,8", "2024-01-05T00:00Z,5,0,2,8", "2024-01-05T01:00Z,1,0,2,8");
        var imported = WeatherImporter.read(path, HILL, Span.ALL);
        assertThat(imported.report().rowsRepeated()).isEqualTo(1);
        assertThat(at(imported.series(), "2024-01-05T00:00:00Z").outsideAirC()).isEqualTo(1);
    }

    @Test
    void readsTheSameTwice() throws Exception {
        var path = file(HEADER, "2024-01-05T00:00Z,1,0,2,8", "2024-01-05T03:00Z,-4,-6,5,1");
        var once = WeatherImporter.read(path, HILL, Span.ALL);
        var twice = WeatherImporter.read(path, HILL, Span.ALL);
        assertThat(once.report()).isEqualTo(twice.report());
        for (int i = 0; i < once.series().samples(); i++) {
            assertThat(once.series().sample(i)).isEqualTo(twice.series().sample(i));
        }
    }
}
