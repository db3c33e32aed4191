package rimeward.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;

/** Heights at noon are 90° less the latitude, 52°, and more or less the tilt of the earth's axis, 23.44°. */
class SunClockTest {
    private static double height(String at) {
        return SunClock.height(OffsetDateTime.parse(at).toEpochSecond(), ZoneOffset.UTC);
    }

    @Test
    void standsAsHighAtNoonAsTheSeasonLetsIt() {
        assertThat(height("2026-12-21T12:00Z")).isCloseTo(StrictMath.sin(StrictMath.toRadians(14.56)), within(0.003));
        assertThat(height("2026-06-21T12:00Z")).isCloseTo(StrictMath.sin(StrictMath.toRadians(61.44)), within(0.003));
        assertThat(height("2026-03-21T12:00Z")).isCloseTo(StrictMath.sin(StrictMath.toRadians(38)), within(0.02));
    }

    @Test
    void isNothingByNight() {
        assertThat(height("2026-12-21T00:00Z")).isZero();
        assertThat(height("2026-12-21T17:00Z")).isZero();
        assertThat(height("2026-12-21T07:00Z")).isZero();
        assertThat(height("2026-12-21T14:00Z")).isBetween(0.1, 0.2);
    }

    @Test
    void goesByStandardTimeInSummerToo() {
        ZoneId zone = ZoneId.of("Europe/London");
        long noonS = OffsetDateTime.parse("2026-06-21T12:00Z").toEpochSecond();
        assertThat(SunClock.height(noonS, zone)).isGreaterThan(SunClock.height(noonS - 3600, zone));
        assertThat(SunClock.height(noonS, zone)).isGreaterThan(SunClock.height(noonS + 3600, zone));
    }
}
