package rimeward.core.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import org.junit.jupiter.api.Test;

class SunTimesTest {
    private static final SunTimes UPLAND = new SunTimes(54.6, -2.6);

    private static long at(String time) {
        return Instant.parse(time).getEpochSecond();
    }

    @Test
    void oneNightGoesFromNoonToNoon() {
        NightSpan night = UPLAND.night(at("2014-01-10T20:00:00Z")).orElseThrow();
        assertThat(UPLAND.night(at("2014-01-10T13:00:00Z"))).contains(night);
        assertThat(UPLAND.night(at("2014-01-11T11:00:00Z"))).contains(night);
        assertThat(UPLAND.night(at("2014-01-11T13:00:00Z")).orElseThrow().sunsetEpochS())
                .isGreaterThan(night.sunriseEpochS());
        assertThat(night.sunsetEpochS()).isBetween(at("2014-01-10T16:00:00Z"), at("2014-01-10T16:20:00Z"));
        assertThat(night.sunriseEpochS()).isBetween(at("2014-01-11T08:15:00Z"), at("2014-01-11T08:35:00Z"));
        assertThat(UPLAND.noonAfter(at("2014-01-10T13:00:00Z")) - UPLAND.noonBefore(at("2014-01-10T13:00:00Z")))
                .isCloseTo(86_400, within(60L));
    }

    @Test
    void duskIsGradual() {
        NightSpan night = UPLAND.night(at("2014-01-10T20:00:00Z")).orElseThrow();
        assertThat(UPLAND.darkness(night.sunsetEpochS())).isEqualTo(0.5);
        assertThat(UPLAND.darkness(night.sunsetEpochS() - 3600)).isZero();
        assertThat(UPLAND.darkness(night.sunriseEpochS() - 3600)).isEqualTo(1);
        assertThat(UPLAND.darkness(at("2014-01-11T00:00:00Z"))).isEqualTo(1);
        assertThat(UPLAND.darkness(at("2014-01-11T12:00:00Z"))).isZero();
    }

    @Test
    void whereTheSunDoesNotSetOrRiseItSaysSo() {
        SunTimes north = new SunTimes(71, 25);
        assertThat(north.around(at("2014-06-21T12:00:00Z"))).isInstanceOf(Daylight.NeverSets.class);
        assertThat(north.around(at("2014-12-21T12:00:00Z"))).isInstanceOf(Daylight.NeverRises.class);
        assertThat(north.night(at("2014-12-21T12:00:00Z"))).isEmpty();
        assertThat(north.darkness(at("2014-12-21T12:00:00Z"))).isEqualTo(1);
        assertThat(north.darkness(at("2014-06-21T00:00:00Z"))).isZero();
        assertThat(new SunTimes(90, 0).around(at("2014-06-21T12:00:00Z"))).isInstanceOf(Daylight.NeverSets.class);
    }

    @Test
    void withoutAPlaceNightsLastFromSixToSix() {
        NightSpan night =
                SunTimes.byClock(12 * 3600).night(at("2014-01-10T12:00:00Z")).orElseThrow();
        assertThat(night.sunsetEpochS()).isCloseTo(at("2014-01-10T06:00:00Z"), within(1200L));
        assertThat(night.sunriseEpochS()).isCloseTo(at("2014-01-10T18:00:00Z"), within(1200L));
    }

    @Test
    void whatIsNoPlaceIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new SunTimes(91, 0))
                .withMessageContaining("latitude 91");
        assertThatIllegalArgumentException().isThrownBy(() -> new SunTimes(Double.NaN, 0));
    }
}
