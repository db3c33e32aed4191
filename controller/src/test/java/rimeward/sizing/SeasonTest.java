package rimeward.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rimeward.site.Tariff;

class SeasonTest {
    private static final Tariff FLAT = new Tariff.Flat("GBP", 0.25);
    private static final long MIDNIGHT_S = Instant.parse("2026-01-10T00:00:00Z").getEpochSecond();

    @ParameterizedTest(name = "{0} to {1} °C below {2} °C")
    @CsvSource({"0, 2, 4, 6", "6, 8, 4, 0", "6, 2, 4, 1", "2, 6, 4, 1", "4, 4, 4, 0", "3, 7, 4, 0.25"})
    void degreeHoursOfAStraightLine(double fromC, double toC, double baseC, double expectedKh) {
        assertThat(DegreeHours.belowKh(fromC, toC, baseC, 2)).isCloseTo(expectedKh, within(1e-12));
    }

    @Test
    void aSineThroughTheBase() {
        // Day of mean 5 °C and amplitude 4 K, base 5 °C: half of it lies below, 4 K · 24 h / π.
        AirCourse course = new AirCourse();
        for (int minute = 0; minute <= 1440; minute++) {
            course.add(MIDNIGHT_S + 60L * minute, 5 + 4 * StrictMath.sin(2 * StrictMath.PI * minute / 1440));
        }
        Season season = Season.of(course, 4, 5, FLAT, ZoneOffset.UTC);
        assertThat(season.belowHeldKh()).isCloseTo(4 * 24 / StrictMath.PI, within(1e-3));
        assertThat(season.belowFloorKh()).isLessThan(season.belowHeldKh());
        assertThat(season.kWh(1000)).isCloseTo(season.belowHeldKh(), within(1e-9));
        assertThat(season.cost(1000)).isCloseTo(0.25 * season.belowHeldKh(), within(1e-9));
        assertThat(season.isWinter()).isFalse();
    }

    @Test
    void eachHourAtItsOwnPrice() {
        AirCourse course = new AirCourse();
        for (int hour = 0; hour <= 24; hour++) {
            course.add(MIDNIGHT_S + 3600L * hour, -5);
        }
        Tariff dayNight = new Tariff.DayNight("GBP", 0.30, 0.10, 30, 450); // 00:30 to 07:30
        ZoneId nepal = ZoneId.of("Asia/Kathmandu"); // a whole day there too, whichever way it is cut
        Season season = Season.of(course, 5, 5, dayNight, nepal);
        assertThat(season.belowHeldKh()).isCloseTo(240, within(1e-9));
        assertThat(season.cost(1000)).isCloseTo(10 * (7 * 0.10 + 17 * 0.30), within(1e-9));
    }

    @Test
    void longGapsAreNotCountedAndSaidToBe() {
        AirCourse course = new AirCourse();
        course.add(MIDNIGHT_S, 0);
        course.add(MIDNIGHT_S + 3 * 3600, 0); // bridged
        course.add(MIDNIGHT_S + 13 * 3600, 0);
        course.add(MIDNIGHT_S + 14 * 3600, 0);
        Season season = Season.of(course, 4, 4, FLAT, ZoneOffset.UTC);
        assertThat(season.missingH()).isEqualTo(10);
        assertThat(season.belowHeldKh()).isCloseTo(4 * 4, within(1e-9));
    }
}
