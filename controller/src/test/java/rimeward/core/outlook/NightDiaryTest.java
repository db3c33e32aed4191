package rimeward.core.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.LongPredicate;
import org.junit.jupiter.api.Test;

class NightDiaryTest {
    private static final SunTimes SUN = SunTimes.byClock(0);
    private static final long NOON_S = 16_000 * 86_400L + 43_200;
    private static final long DAY_S = 86_400;

    /** Warmest at 14 h, coldest at 2 h, and each day 1 K colder. */
    private static OutsideAir.Seen air(long epochS) {
        double days = (double) (epochS - NOON_S) / DAY_S;
        double airC = 4 * Math.cos(2 * Math.PI * (days - 1 / 12.0)) - days;
        return new OutsideAir.Seen(epochS, airC, OptionalDouble.of(airC - 2));
    }

    private static NightDiary seen(NightDiary from, long fromS, long untilS, LongPredicate isSeen) {
        NightDiary diary = from;
        for (long t = fromS; t <= untilS; t += 300) {
            diary = isSeen.test(t) ? diary.after(air(t), SUN) : diary;
        }
        return diary;
    }

    @Test
    void eachWholeNightIsKeptWithItsEvening() {
        NightDiary diary = seen(NightDiary.EMPTY, NOON_S + 1200, NOON_S + 3 * DAY_S + 1200, t -> true);
        assertThat(diary.nights()).hasSize(3);
        KnownNight first = diary.nights().get(0);
        assertThat(first.lowestC()).isCloseTo(-4.6, within(0.1));
        assertThat(first.highestC()).isCloseTo(3.9, within(0.1));
        assertThat(first.evening())
                .isInstanceOfSatisfying(
                        OutsideAir.Seen.class,
                        evening -> assertThat(evening.epochS()).isCloseTo(NOON_S + 8 * 3600, within(1200L)));
    }

    @Test
    void aNightThatWasNotSeenForHoursIsNotKept() {
        NightDiary diary = seen(
                NightDiary.EMPTY,
                NOON_S + 1200,
                NOON_S + 2 * DAY_S + 1200,
                t -> t < NOON_S + 10 * 3600 || t > NOON_S + 13 * 3600);
        assertThat(diary.nights()).hasSize(1);
        assertThat(diary.nights().get(0).lowestC()).isLessThan(-5);
    }

    @Test
    void tonightsEveningIsKnownFromTwoHoursAfterSunsetUntilNoon() {
        NightDiary early = seen(NightDiary.EMPTY, NOON_S + 1200, NOON_S + 7 * 3600, t -> true);
        assertThat(early.evening(NOON_S + 7 * 3600, SUN)).isEqualTo(OutsideAir.UNSEEN);
        NightDiary late = seen(early, NOON_S + 7 * 3600 + 300, NOON_S + 12 * 3600, t -> true);
        assertThat(late.evening(NOON_S + 12 * 3600, SUN)).isInstanceOf(OutsideAir.Seen.class);
        assertThat(late.evening(NOON_S + DAY_S + 3600, SUN)).as("the next day").isEqualTo(OutsideAir.UNSEEN);
    }

    @Test
    void theDiaryIsReadBackInTheMiddleOfANight() {
        NightDiary diary = seen(NightDiary.EMPTY, NOON_S + 1200, NOON_S + DAY_S + 10 * 3600, t -> true);
        NightDiary back = NightDiary.parse(diary.toText());
        assertThat(back).isEqualTo(diary);
        long later = NOON_S + 2 * DAY_S + 1200;
        assertThat(seen(back, NOON_S + DAY_S + 10 * 3600 + 300, later, t -> true)
                        .nights())
                .hasSize(2);
        assertThat(NightDiary.parse(NightDiary.EMPTY.toText())).isEqualTo(NightDiary.EMPTY);
    }

    @Test
    void whatIsDamagedIsRefused() {
        for (String bad :
                List.of("", "night-diary 1", "night-diary 2\n-", "night-diary 1\n-\n- - - 3 2", "night-diary 1\n1 2")) {
            assertThatIllegalArgumentException().isThrownBy(() -> NightDiary.parse(bad));
        }
    }

    @Test
    void aClockSetBackTeachesNothing() {
        NightDiary diary = seen(NightDiary.EMPTY, NOON_S + 1200, NOON_S + 3600, t -> true);
        assertThat(diary.after(air(NOON_S - 40 * DAY_S), SUN)).isEqualTo(diary);
    }

    @Test
    void onlyTheNewestSixtyNightsAreKept() {
        NightDiary diary = seen(NightDiary.EMPTY, NOON_S + 1200, NOON_S + 62 * DAY_S + 1200, t -> true);
        assertThat(diary.nights()).hasSize(NightDiary.MOST_NIGHTS);
        assertThat(diary.nights().get(0).lowestC()).isCloseTo(-6.6, within(0.1));
    }
}
