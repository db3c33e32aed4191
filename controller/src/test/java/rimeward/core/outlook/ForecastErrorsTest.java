package rimeward.core.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Forecasts made at noon say 0 °C for two days; a hollow is 3 K colder than they say by night. */
class ForecastErrorsTest {
    private static final SunTimes SUN = SunTimes.byClock(0);
    private static final long DAY_S = 86_400;
    private static final long NIGHT_LEAD_S = 12 * 3600;
    private static final long DAY_LEAD_S = 24 * 3600;

    private static Forecast forecast(int day) {
        List<Forecast.Point> points = new ArrayList<>();
        for (int hour = 0; hour <= 48; hour++) {
            points.add(new Forecast.Point(
                    noonS(day) + hour * 3600L,
                    0,
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty()));
        }
        return new Forecast("test", noonS(day), points);
    }

    private static long noonS(int day) {
        return (16_000 + day) * DAY_S + DAY_S / 2;
    }

    /** The hours of a day after its noon, wrong by one error at night and another by day. */
    private static List<OutsideAir.Seen> seen(int day, double nightK, double dayK) {
        List<OutsideAir.Seen> all = new ArrayList<>();
        for (int hour = 0; hour < 30; hour++) {
            long t = noonS(day) + hour * 3600L;
            all.add(new OutsideAir.Seen(t, SUN.darkness(t) > 0.5 ? nightK : dayK, OptionalDouble.empty()));
        }
        return all;
    }

    private static ForecastErrors after(ForecastErrors errors, int nights, double nightK, double spreadK, long seed) {
        Random random = new Random(seed);
        ForecastErrors now = errors;
        for (int day = 0; day < nights; day++) {
            double nightErrorK = nightK + spreadK * random.nextGaussian();
            now = now.after(forecast(day), seen(day, nightErrorK, spreadK * random.nextGaussian()), SUN);
        }
        return now;
    }

    @Test
    void aHollowIsLearnedByNightOnly() {
        ForecastErrors errors = after(ForecastErrors.USUAL, 40, -3, 0.8, 1);
        assertThat(errors.nights()).isEqualTo(40);
        assertThat(errors.at(NIGHT_LEAD_S, 1).biasK()).isCloseTo(-3, within(0.5));
        assertThat(errors.at(NIGHT_LEAD_S, 1).spreadK()).isBetween(0.6, 1.4);
        assertThat(errors.at(DAY_LEAD_S, 0).biasK()).isCloseTo(0, within(0.5));
    }

    /** One hour of each night is 2 K colder than the others, and no forecast says so. */
    @Test
    void thatTheColdestHourIsColderThanSaidIsLearnedOfTheLowest() {
        ForecastErrors errors = ForecastErrors.USUAL;
        for (int day = 0; day < 40; day++) {
            List<OutsideAir.Seen> seen = new ArrayList<>(seen(day, 0, 0));
            seen.set(16, new OutsideAir.Seen(seen.get(16).epochS(), -2, OptionalDouble.empty()));
            errors = errors.after(forecast(day), seen, SUN);
        }
        assertThat(errors.at(NIGHT_LEAD_S, 1).biasK()).isGreaterThan(-0.5);
        long nightS = noonS(50) + 7 * 3600;
        Course course = new CourseMaker(SUN)
                .from(nightS, OutsideAir.UNSEEN, Optional.of(forecast(50)), errors, NightDiary.EMPTY)
                .orElseThrow();
        assertThat(course.lowest(nightS, nightS + 10 * 3600).airC()).isCloseTo(-2, within(0.3));
    }

    @Test
    void oneNightIsNotTakenForTheRule() {
        ForecastErrors errors = after(ForecastErrors.USUAL, 1, -3, 0, 1);
        assertThat(errors.at(NIGHT_LEAD_S, 1).biasK()).isBetween(-1.3, -0.3);
    }

    @Test
    void oneLyingSensorNightDoesNotSpoilWhatWasLearned() {
        ForecastErrors learned = after(ForecastErrors.USUAL, 20, -3, 0.8, 2);
        ForecastErrors lied = learned.after(forecast(21), seen(21, 85, 85), SUN);
        ForecastErrors.Expected before = learned.at(NIGHT_LEAD_S, 1);
        ForecastErrors.Expected then = lied.at(NIGHT_LEAD_S, 1);
        assertThat(then.biasK()).isCloseTo(before.biasK(), within(0.25 * before.spreadK()));
        assertThat(then.spreadK()).isLessThan(1.25 * before.spreadK());
    }

    @Test
    void aForecastThatGotBetterIsBelievedAgain() {
        ForecastErrors hollow = after(ForecastErrors.USUAL, 60, -3, 0.8, 3);
        ForecastErrors mended = after(hollow, 60, 0, 0.8, 4);
        assertThat(mended.at(NIGHT_LEAD_S, 1).biasK()).isGreaterThan(-1.2);
    }

    @Test
    void fartherAheadIsLessCertain() {
        double lastK = 0;
        for (int hour = 2; hour <= 36; hour += 2) {
            double spreadK = ForecastErrors.USUAL.at(hour * 3600L, 1).spreadK();
            assertThat(spreadK).isGreaterThanOrEqualTo(lastK);
            lastK = spreadK;
        }
        assertThat(ForecastErrors.USUAL.at(300 * 3600L, 1).spreadK()).isEqualTo(lastK);
    }

    @Test
    void itIsReadBackAsItWasWritten() {
        ForecastErrors errors = after(ForecastErrors.USUAL, 7, -3, 0.8, 5);
        ForecastErrors back = ForecastErrors.parse(errors.toText());
        assertThat(back.toText()).isEqualTo(errors.toText());
        assertThat(back.at(NIGHT_LEAD_S, 1).biasK())
                .isCloseTo(errors.at(NIGHT_LEAD_S, 1).biasK(), within(1e-6));
        assertThat(back.nights()).isEqualTo(7);
    }

    @Test
    void whatIsDamagedIsRefused() {
        String text = ForecastErrors.USUAL.toText();
        for (String bad : List.of(
                "",
                "forecast-errors 2",
                text.substring(0, text.length() - 12),
                text.replaceFirst("1\\.5", "NaN"),
                text.replaceFirst("1\\.5", "-1.5"),
                text.replaceFirst("0 0", "x 0"))) {
            assertThatIllegalArgumentException().isThrownBy(() -> ForecastErrors.parse(bad));
        }
    }
}
