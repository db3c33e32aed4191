package rimeward.core.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class CourseMakerTest {
    private static final SunTimes SUN = SunTimes.byClock(0);
    private static final CourseMaker MAKER = new CourseMaker(SUN);
    private static final long DAY_S = 86_400;
    private static final long NOON_S = 16_000 * DAY_S + DAY_S / 2;
    private static final long EVENING_S = NOON_S + 9 * 3600;

    private static OutsideAir.Seen air(long epochS, double airC) {
        return new OutsideAir.Seen(epochS, airC, OptionalDouble.of(airC - 2));
    }

    private static Forecast forecast(int hours) {
        List<Forecast.Point> points = new ArrayList<>();
        for (int hour = 0; hour <= hours; hour++) {
            points.add(new Forecast.Point(
                    NOON_S + hour * 3600L, -1, OptionalDouble.of(-4), OptionalDouble.empty(), OptionalDouble.empty()));
        }
        return new Forecast("test", NOON_S, points);
    }

    /** Two weeks of nights that fall by 5 K after the evening, more or less; and tonight's evening at 2 °C. */
    private static NightDiary fortnight() {
        List<KnownNight> nights = new ArrayList<>();
        for (int i = 0; i < 14; i++) {
            double eveningC = i % 5;
            nights.add(new KnownNight(air(0, eveningC), eveningC - 5 + 0.3 * (i % 2), eveningC + 3));
        }
        OpenNight tonight = OpenNight.begunWith(air(NOON_S + 600, 5), SUN.noonBefore(NOON_S + 3600))
                .with(air(NOON_S + 8 * 3600, 2), SUN.night(EVENING_S));
        return new NightDiary(nights, tonight);
    }

    private static Course.Step at(Course course, long epochS) {
        return course.steps().stream()
                .filter(step -> step.epochS() == epochS)
                .findFirst()
                .orElseThrow();
    }

    private static Course with(OutsideAir now, Optional<Forecast> forecast, NightDiary diary) {
        return MAKER.from(EVENING_S, now, forecast, ForecastErrors.USUAL, diary).orElseThrow();
    }

    @Test
    void whatTheSensorShowsCountsNowAndTheForecastLater() {
        Course course = with(air(EVENING_S, -3), Optional.of(forecast(48)), NightDiary.EMPTY);
        assertThat(course.basis()).isEqualTo(new Course.Basis.Forecasted("test", NOON_S, 0));
        assertThat(at(course, EVENING_S).airC()).isEqualTo(-3);
        assertThat(at(course, EVENING_S).spreadK()).isCloseTo(0.3, within(1e-9));
        assertThat(at(course, EVENING_S + DAY_S).airC()).isCloseTo(-1, within(0.05));
        assertThat(course.steps()).hasSize(97).isSortedAccordingTo((a, b) -> Long.compare(a.epochS(), b.epochS()));
        assertThat(course.steps())
                .allSatisfy(step -> assertThat(step.dewPointC()).isLessThanOrEqualTo(step.airC()));
        double lastK = 0;
        for (Course.Step step : course.steps().subList(0, 28)) {
            assertThat(step.spreadK()).isGreaterThanOrEqualTo(lastK);
            lastK = step.spreadK();
        }
    }

    @Test
    void aForecastCountsWithoutASensor() {
        Course course = with(OutsideAir.UNSEEN, Optional.of(forecast(48)), NightDiary.EMPTY);
        assertThat(at(course, EVENING_S).airC()).isEqualTo(-1);
        assertThat(at(course, EVENING_S).dewPointC()).isEqualTo(-4);
        assertThat(at(course, EVENING_S).spreadK()).isGreaterThan(1);
    }

    @Test
    void aForecastThatEndsInTheNightIsNotUsed() {
        Course course = with(air(EVENING_S, 2), Optional.of(forecast(12)), fortnight());
        assertThat(course.basis()).isEqualTo(new Course.Basis.Local(14));
    }

    @Test
    void aForecastThatReachesTheMorningIsUsedAsFarAsItGoes() {
        Course course = with(air(EVENING_S, 2), Optional.of(forecast(16)), fortnight());
        assertThat(course.basis()).isInstanceOf(Course.Basis.Forecasted.class);
        assertThat(course.steps().get(course.steps().size() - 1).epochS()).isEqualTo(NOON_S + 19 * 3600);
    }

    @Test
    void withoutAForecastTheEveningPredictsTheNight() {
        double onTheCurveC = 2 - 4.85 * Math.sqrt(0.1); // an hour of ten is over
        Course course = with(air(EVENING_S, onTheCurveC), Optional.empty(), fortnight());
        assertThat(course.basis()).isEqualTo(new Course.Basis.Local(14));
        long sunriseS = SUN.night(EVENING_S).orElseThrow().sunriseEpochS();
        Lowest lowest = course.lowest(EVENING_S, sunriseS);
        assertThat(lowest.airC()).isCloseTo(-2.85, within(0.1));
        assertThat(lowest.spreadK()).isBetween(0.2, 0.6);
        Course milder = with(air(EVENING_S, onTheCurveC + 1), Optional.empty(), fortnight());
        assertThat(milder.lowest(EVENING_S, sunriseS).airC()).isCloseTo(lowest.airC() + 1, within(0.05));
        assertThat(at(course, EVENING_S + DAY_S).spreadK())
                .as("the next evening")
                .isGreaterThan(1);
    }

    @Test
    void byDayItIsAGuessAndSaysSo() {
        long morningS = NOON_S + DAY_S - 2 * 3600;
        Course course = MAKER.from(morningS, air(morningS, 1), Optional.empty(), ForecastErrors.USUAL, fortnight())
                .orElseThrow();
        assertThat(course.basis().inWords()).contains("guess");
        assertThat(course.lowest().spreadK()).isGreaterThan(1);
    }

    @Test
    void onTheFirstDayTheAirNowIsAllThereIs() {
        Course course = with(air(EVENING_S, 1), Optional.empty(), NightDiary.EMPTY);
        assertThat(course.basis()).isEqualTo(new Course.Basis.Guess());
        assertThat(at(course, EVENING_S).airC()).isCloseTo(1, within(1e-9));
        assertThat(course.lowest().airC()).isBetween(-6.0, -1.0);
    }

    @Test
    void whereNothingIsKnownThereIsNoCourse() {
        assertThat(MAKER.from(EVENING_S, OutsideAir.UNSEEN, Optional.empty(), ForecastErrors.USUAL, NightDiary.EMPTY))
                .isEmpty();
    }

    @Test
    void inThePolarNightThereIsACourseToo() {
        SunTimes north = new SunTimes(71, 25);
        long december = 1_387_600_000;
        Course course = new CourseMaker(north)
                .from(december, air(december, -8), Optional.empty(), ForecastErrors.USUAL, fortnight())
                .orElseThrow();
        assertThat(course.basis()).isEqualTo(new Course.Basis.Guess());
    }

    @Test
    void aGapInTheForecastIsNotBridged() {
        Forecast whole = forecast(48);
        List<Forecast.Point> points = new ArrayList<>(whole.points().subList(0, 12));
        points.addAll(whole.points().subList(20, 48));
        Course course = with(air(EVENING_S, 2), Optional.of(new Forecast("holed", NOON_S, points)), fortnight());
        assertThat(course.basis()).isInstanceOf(Course.Basis.Local.class);
    }
}
