package rimeward.service;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rimeward.core.outlook.Course;
import rimeward.core.outlook.Forecast;
import rimeward.core.outlook.Outlook;
import rimeward.core.reading.Tick;
import rimeward.core.reading.WallTime;
import rimeward.fixture.Sites;
import rimeward.port.Forecasts;
import rimeward.site.Forecasting;

class NightsAheadTest {
    /** 2026-01-10T12:00Z. */
    private static final long NOON_S = 1_768_046_400;

    private static final int HOUR_S = 3600;

    private Optional<Forecast> newest = Optional.empty();
    private int asked;

    private final NightsAhead nights = new NightsAhead(
            new Forecasts() {
                @Override
                public Optional<Forecast> newest() {
                    return newest;
                }

                @Override
                public void askAnew() {
                    asked++;
                }

                @Override
                public Optional<String> trouble() {
                    return Optional.empty();
                }
            },
            Sites.metered().with(new Forecasting.FromFile("/var/lib/rimeward/forecast.csv")));

    /** Falls from 2 °C at noon to this at four in the morning, and rises again. */
    private static Forecast to(double lowestC) {
        List<Forecast.Point> points = new ArrayList<>();
        for (int hour = 0; hour <= 36; hour++) {
            double airC = lowestC + (2 - lowestC) * Math.abs(hour - 16) / 16;
            points.add(new Forecast.Point(
                    NOON_S + (long) hour * HOUR_S,
                    airC,
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty()));
        }
        return new Forecast("here", NOON_S - HOUR_S, points);
    }

    private Outlook at(long epochS) {
        return nights.latest(new Tick(epochS, epochS * 1000, new WallTime(epochS * 1000, true)));
    }

    @Test
    void fromNoonOnTheLowestOfTheNightIsTold() {
        newest = Optional.of(to(-8));
        Outlook.Night night = (Outlook.Night) at(NOON_S + HOUR_S);
        assertThat(night.lowestOutsideC()).isCloseTo(-8, within(1.5));
        assertThat(night.spreadK()).isBetween(1.0, 4.0);
        Outlook.Night later = (Outlook.Night) at(NOON_S + 10 * HOUR_S);
        assertThat(later.night()).isEqualTo(night.night());
        assertThat(night.endsInS() - later.endsInS()).isCloseTo(9.0 * HOUR_S, within(60.0));
    }

    private static Course course(long fromS, Course.Basis basis, double lowestC) {
        List<Course.Step> steps = new ArrayList<>();
        for (int hour = 0; hour <= 24; hour++) {
            steps.add(new Course.Step(fromS + (long) hour * HOUR_S, lowestC, 0.5, lowestC - 1));
        }
        return new Course(basis, steps);
    }

    @Test
    void whatWasFoundOffTheTickGoesBeforeForAnHour() {
        newest = Optional.of(to(-8));
        long nowS = NOON_S + HOUR_S;
        nights.expect(course(nowS, new Course.Basis.Local(9), -11), nowS);
        assertThat(((Outlook.Night) at(nowS + 60)).lowestOutsideC()).isCloseTo(-11, within(1.0));
        assertThat(((Outlook.Night) at(nowS + HOUR_S + 60)).lowestOutsideC()).isCloseTo(-8, within(1.5));
    }

    @Test
    void aGuessIsNoOutlook() {
        nights.expect(course(NOON_S + HOUR_S, new Course.Basis.Guess(), -11), NOON_S + HOUR_S);
        assertThat(at(NOON_S + HOUR_S + 60)).isEqualTo(Outlook.NONE);
    }

    @Test
    void betweenTwoLooksOnlyTheTimeGoesOn() {
        newest = Optional.of(to(-8));
        Outlook.Night before = (Outlook.Night) at(NOON_S + HOUR_S);
        newest = Optional.of(to(-2));
        Outlook.Night soon = (Outlook.Night) at(NOON_S + HOUR_S + 5);
        assertThat(soon)
                .isEqualTo(new Outlook.Night(
                        before.night(), before.lowestOutsideC(), before.spreadK(), before.endsInS() - 5));
        assertThat(nights.askAnew()).isTrue();
        assertThat(asked).isEqualTo(1);
        assertThat(((Outlook.Night) at(NOON_S + HOUR_S + 10)).lowestOutsideC()).isGreaterThan(-5);
    }

    @Test
    void nothingIsToldByDayWithoutAForecastOrWithoutTheTimeOfDay() {
        assertThat(at(NOON_S + HOUR_S)).isEqualTo(Outlook.NONE);
        newest = Optional.of(to(-8));
        assertThat(at(NOON_S + 21 * HOUR_S)).isEqualTo(Outlook.NONE);
        Tick unset = new Tick(1, 5000, new WallTime((NOON_S + 2 * HOUR_S) * 1000, false));
        assertThat(nights.latest(unset)).isEqualTo(Outlook.NONE);
    }

    @Test
    void aForecastThatNoNightCanBeIsNone() {
        newest = Optional.of(to(-300));
        assertThat(at(NOON_S + HOUR_S)).isEqualTo(Outlook.NONE);
    }
}
