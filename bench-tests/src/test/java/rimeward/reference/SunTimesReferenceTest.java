package rimeward.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SunriseResult;
import org.junit.jupiter.api.Test;
import rimeward.core.outlook.Daylight;
import rimeward.core.outlook.SunTimes;

/** The controller's short equations against the full algorithm of Reda &amp; Andreas (net.e175.klaus:solarpositioning 2.0.3). */
class SunTimesReferenceTest {
    private static final long NORTHERN_TOLERANCE_S = 240; // the sun creeps along the horizon
    private static final long TOLERANCE_S = 120;

    @Test
    void sunRisesAndSetsWithinMinutesAnywhereInFourYears() {
        int days = 0;
        for (int day = 0; day < 1461; day += 9) {
            for (double latitudeDeg : new double[] {-55, -35, 0, 30, 45, 54.6, 62}) {
                double longitudeDeg = (day * 37) % 340 - 170;
                ZonedDateTime noon = LocalDate.of(2024, 1, 1)
                        .plusDays(day)
                        .atTime(12, 0)
                        .atZone(ZoneOffset.ofTotalSeconds((int) (longitudeDeg * 240)));
                Daylight ours = new SunTimes(latitudeDeg, longitudeDeg).around(noon.toEpochSecond());
                SunriseResult theirs = SPA.calculateSunriseTransitSet(noon, latitudeDeg, longitudeDeg, 69);
                long toleranceS = Math.abs(latitudeDeg) > 60 ? NORTHERN_TOLERANCE_S : TOLERANCE_S;
                if (ours instanceof Daylight.RisesAndSets day1 && theirs instanceof SunriseResult.RegularDay regular) {
                    assertThat(day1.sunriseEpochS())
                            .as("sunrise at %.1f° %.0f°, %s", latitudeDeg, longitudeDeg, noon)
                            .isCloseTo(regular.sunrise().toEpochSecond(), within(toleranceS));
                    assertThat(day1.noonEpochS()).isCloseTo(regular.transit().toEpochSecond(), within(30L));
                    assertThat(day1.sunsetEpochS()).isCloseTo(regular.sunset().toEpochSecond(), within(toleranceS));
                    days++;
                }
            }
        }
        assertThat(days).isEqualTo(163 * 7);
    }

    @Test
    void polarDayAndNightBeginTheSameDay() {
        SunTimes north = new SunTimes(70, 0);
        for (int day = 0; day < 365; day++) {
            ZonedDateTime noon =
                    LocalDate.of(2025, 1, 1).plusDays(day).atTime(12, 0).atZone(ZoneOffset.UTC);
            boolean near = false;
            for (int beside = -1; beside <= 1; beside++) {
                near |= kind(north.around(noon.plusDays(beside).toEpochSecond()))
                        == kind(SPA.calculateSunriseTransitSet(noon, 70, 0, 69));
            }
            assertThat(near).as("%s, within a day", noon).isTrue();
        }
    }

    private static int kind(Daylight light) {
        return light instanceof Daylight.NeverSets ? 1 : light instanceof Daylight.NeverRises ? -1 : 0;
    }

    private static int kind(SunriseResult light) {
        return light instanceof SunriseResult.AllDay ? 1 : light instanceof SunriseResult.AllNight ? -1 : 0;
    }
}
