package rimeward.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Random;
import net.e175.klaus.solarpositioning.DeltaT;
import net.e175.klaus.solarpositioning.SPA;
import org.junit.jupiter.api.Test;
import rimeward.sim.weather.Daylight;
import rimeward.sim.weather.Place;
import rimeward.sim.weather.Sun;

/**
 * The sun against Reda &amp; Andreas, "Solar position algorithm for solar radiation applications", NREL/TP-560-34302 (2004,
 * revised 2008).
 */
class SunReferenceTest {
    private static final double DAY_S = 86_400;

    @Test
    void agreesWithTheWorkedExample() {
        // Table A5.1: 17 October 2003, 12:30:30, 7 h west of Greenwich, 820 hPa, 11 °C.
        var place = new Place(39.742476, -105.1786, 1830.14);
        var sun = Sun.at(Instant.parse("2003-10-17T19:30:30Z").getEpochSecond()).from(place);
        assertThat(90 - sun.apparentElevationDeg(82_000, 11)).isCloseTo(50.11162, within(3e-4));
        assertThat(sun.azimuthDeg()).isCloseTo(194.34024, within(3e-4));
    }

    @Test
    void agreesWithAnIndependentProgramAnywhereFor50Years() {
        // net.e175.klaus:solarpositioning 2.0.3 implements the full algorithm; the shortened one claims 2e-4° from 1990
        // to 2040.
        var random = new Random(4);
        for (int i = 0; i < 5000; i++) {
            long epochS = (long) ((20 + 50 * random.nextDouble()) * 365.25 * DAY_S);
            var place = new Place(
                    130 * random.nextDouble() - 65, 360 * random.nextDouble() - 180, 2000 * random.nextDouble());
            var sun = Sun.at(epochS).from(place);
            var theirs = SPA.calculateSolarPosition(
                    Instant.ofEpochSecond(epochS).atZone(ZoneOffset.UTC),
                    place.latitudeDeg(),
                    place.longitudeDeg(),
                    place.altitudeM(),
                    DeltaT.estimate(LocalDate.ofEpochDay(epochS / 86_400)));
            assertThat(sun.elevationDeg()).isCloseTo(90 - theirs.zenithAngle(), within(2e-4));
            double aside = Math.abs(sun.azimuthDeg() - theirs.azimuth());
            double asideDeg = Math.min(aside, 360 - aside) * Math.cos(Math.toRadians(sun.elevationDeg()));
            assertThat(asideDeg).isLessThan(2e-4);
        }
    }

    @Test
    void risesAndSetsWithinTwoMinutesOfAnIndependentProgram() {
        for (int day = 0; day < 365; day += 5) {
            for (double latitudeDeg : new double[] {-45, 0, 40.7, 54.5}) {
                var place = new Place(latitudeDeg, -2.5, 0);
                var noon = LocalDate.of(2023, 1, 1).plusDays(day).atTime(12, 0).atZone(ZoneOffset.UTC);
                var ours = Daylight.around(place, noon.toEpochSecond());
                var theirs = SPA.calculateSunriseTransitSet(noon, latitudeDeg, -2.5, 69);
                assertThat(theirs)
                        .isInstanceOfSatisfying(
                                net.e175.klaus.solarpositioning.SunriseResult.RegularDay.class, regular -> {
                                    assertThat(ours.sunriseEpochS())
                                            .isCloseTo(regular.sunrise().toEpochSecond(), within(120L));
                                    assertThat(ours.noonEpochS())
                                            .isCloseTo(regular.transit().toEpochSecond(), within(30L));
                                    assertThat(ours.sunsetEpochS())
                                            .isCloseTo(regular.sunset().toEpochSecond(), within(120L));
                                });
            }
        }
    }
}
