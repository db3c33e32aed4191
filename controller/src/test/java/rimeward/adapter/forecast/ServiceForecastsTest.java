package rimeward.adapter.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rimeward.adapter.forecast.Source.Due;

/** When the service is asked, what is kept of it, and what a person is told; hours of outage in a moment. */
class ServiceForecastsTest {
    private static final long MINUTE_MS = 60_000;
    private static final long HOUR_MS = 60 * MINUTE_MS;

    private final FakeClock clock = new FakeClock(Samples.ISSUED_S + 900);
    private final FakeService service = new FakeService();
    private final ServiceForecasts forecasts = forecastsOf("hallin-rigg");

    @Test
    void aForecastComes() {
        service.answersWith(Samples.text("compact.json"));
        attempt();
        assertThat(forecasts.newest().orElseThrow().source()).isEqualTo("api.met.no");
        assertThat(forecasts.newest().orElseThrow().points()).hasSize(7);
        assertThat(forecasts.trouble()).isEmpty();
    }

    @Test
    void theFirstQuestionWaitsSoThatOneWhoStartsAgainAndAgainAsksNobody() {
        Due first = forecasts.first(clock.nowMs());
        assertThat(first.earliestMs()).isEqualTo(clock.nowMs() + 30_000);
        assertThat(first.usualMs()).isBetween(first.earliestMs(), first.earliestMs() + 30_000);
        assertThat(forecasts.trouble()).isEmpty();
    }

    @Test
    void itIsNotAskedBeforeItsAnswerExpires() {
        service.answersWith(Samples.text("compact.json"));
        Due due = attempt();
        assertThat(due.earliestMs()).isEqualTo(clock.nowMs() + 30 * MINUTE_MS);
        assertThat(due.usualMs()).isBetween(due.earliestMs(), due.earliestMs() + 5 * MINUTE_MS);
    }

    @ParameterizedTest
    @ValueSource(longs = {-1_000_000, 0, 1, 599})
    void anAnswerThatHasExpiredAlreadyHoldsTenMinutes(long freshForS) {
        service.answers(FakeService.freshFor(200, Samples.text("compact.json"), freshForS));
        assertThat(attempt().earliestMs()).isEqualTo(clock.nowMs() + 10 * MINUTE_MS);
    }

    @Test
    void anAnswerThatHoldsForYearsHoldsADay() {
        service.answers(FakeService.freshFor(200, Samples.text("compact.json"), Long.MAX_VALUE));
        assertThat(attempt().earliestMs()).isEqualTo(clock.nowMs() + 24 * HOUR_MS);
    }

    @Test
    void unchangedMeansThatTheOldOneStillHolds() {
        service.answersWith(Samples.text("compact.json"));
        attempt();
        clock.pass(0.5);
        service.answers(FakeService.freshFor(304, "", 1200));
        Due due = attempt();
        assertThat(service.asked).containsExactly(Optional.empty(), Optional.of("Sat, 10 Jan 2026 14:21:07 GMT"));
        assertThat(due.earliestMs()).isEqualTo(clock.nowMs() + 20 * MINUTE_MS);
        assertThat(forecasts.newest()).isPresent();
        assertThat(forecasts.trouble()).isEmpty();
    }

    @Test
    void twoDaysOfOutageAreAskedThroughSeldomAndToldOnceItMatters() {
        service.answersWith(Samples.compactLaterByDays(0));
        attempt();
        service.isSilent("It does not answer: nothing came for 10 s.");
        List<Long> attempts = outage(48);
        for (int i = 1; i < attempts.size(); i++) {
            assertThat(attempts.get(i) - attempts.get(i - 1)).isBetween(10 * MINUTE_MS, 65 * MINUTE_MS);
        }
        assertThat(attempts).hasSizeBetween(45, 55);
        assertThat(forecasts.newest()).isEmpty();
        service.answersWith(Samples.compactLaterByDays(2));
        attempt();
        assertThat(forecasts.newest()).isPresent();
        assertThat(forecasts.trouble()).isEmpty();
    }

    @Test
    void anOutageIsNoTroubleWhileTheLastForecastIsGoodAndNews() {
        service.answersWith(Samples.text("compact.json"));
        attempt();
        service.isSilent("It does not answer: nothing came for 10 s.");
        outage(1.5);
        assertThat(forecasts.trouble()).isEmpty();
        outage(2.5);
        assertThat(forecasts.newest()).isPresent();
        assertThat(forecasts.trouble().orElseThrow())
                .matches(
                        "The forecast of api\\.met\\.no is [45] hours old and no newer one comes\\. It does not answer: nothing"
                                + " came for 10 s\\. It is tried again and again\\. It is used until it is 24 hours old\\.");
    }

    @Test
    void aForecastIsUsedUntilItsLastPointIsPast() {
        service.answersWith(Samples.text("compact.json"));
        attempt();
        clock.pass((Samples.LAST_S - Samples.ISSUED_S - 900) / 3600.0);
        assertThat(forecasts.newest()).isPresent();
        clock.pass(1.1);
        assertThat(forecasts.newest()).isEmpty();
        assertThat(forecasts.trouble())
                .hasValue("The forecast of api.met.no ended 66 minutes ago. It has no newer one."
                        + " Nights are told from the tunnel's own air meanwhile.");
    }

    @Test
    void aForecastIsUsedUntilItIsADayOld() {
        service.answersWith(Samples.text("compact.json").replace("2026-01-11T12:00:00Z", "2026-01-14T12:00:00Z"));
        attempt();
        clock.pass(23.7);
        assertThat(forecasts.newest()).isPresent();
        clock.pass(3.1);
        assertThat(forecasts.newest()).isEmpty();
        assertThat(forecasts.trouble())
                .hasValue("The forecast of api.met.no is 27 hours old, too old to be used. It has no newer one."
                        + " Nights are told from the tunnel's own air meanwhile.");
    }

    @Test
    void withoutAClockNobodyIsAskedAndNothingIsUsed() {
        service.answersWith(Samples.text("compact.json"));
        clock.isSet(false);
        Due due = attempt();
        assertThat(service.asked).isEmpty();
        assertThat(due.usualMs()).isEqualTo(clock.nowMs() + 30_000);
        assertThat(forecasts.trouble().orElseThrow())
                .contains("clock is not set")
                .contains("timedatectl");
        clock.isSet(true);
        attempt();
        assertThat(forecasts.newest()).isPresent();
        clock.isSet(false);
        assertThat(forecasts.newest()).isEmpty();
    }

    @Test
    void aForecastFromTheFutureMeansThatAClockIsWrong() {
        service.answersWith(Samples.compactLaterByDays(1));
        attempt();
        assertThat(forecasts.newest()).isEmpty();
        assertThat(forecasts.trouble().orElseThrow())
                .contains("issued later than now: is this computer's clock right?");
    }

    @ParameterizedTest
    @ValueSource(strings = {"<html>Please log in to the hotel's network</html>", "{\"properties\":", "{}"})
    void nonsenseLeavesTheLastForecastAndIsAskedForAnew(String body) {
        service.answersWith(Samples.text("compact.json"));
        attempt();
        clock.pass(0.6);
        service.answers(new Reply(
                200, body, Optional.of("Sun, 11 Jan 2026 00:00:00 GMT"), OptionalLong.of(1800), FakeService.NOT_SAID));
        Due due = attempt();
        assertThat(due.earliestMs()).isEqualTo(clock.nowMs() + 30 * MINUTE_MS);
        attempt();
        assertThat(service.asked.get(2)).hasValue("Sat, 10 Jan 2026 14:21:07 GMT");
        assertThat(forecasts.newest()).isPresent();
    }

    @Test
    void nonsenseFromTheStartIsToldAtOnce() {
        service.answersWith("<html>Please log in</html>");
        attempt();
        assertThat(forecasts.trouble().orElseThrow())
                .startsWith("There is no forecast from api.met.no. What it answers is no forecast: ");
    }

    @Test
    void aRefusalSaysWhatToDoAndIsNotAskedOfAgainForHours() {
        service.answersWith(Samples.text("compact.json"));
        attempt();
        service.answers(403);
        Due due = attempt();
        assertThat(due.earliestMs()).isEqualTo(clock.nowMs() + 3 * HOUR_MS);
        assertThat(forecasts.newest()).isPresent();
        assertThat(forecasts.trouble().orElseThrow())
                .contains("refuses to answer us (403)")
                .contains("[forecast] contact");
    }

    @Test
    void aQuestionThatIsNotUnderstoodPointsAtTheSettings() {
        service.answers(422);
        assertThat(attempt().earliestMs()).isEqualTo(clock.nowMs() + 3 * HOUR_MS);
        assertThat(forecasts.trouble().orElseThrow()).contains("(422)").contains("latitude_deg");
    }

    @Test
    void whoSaysHowLongToStayAwayIsHeard() {
        service.answers(FakeService.retryAfter(429, 5400));
        Due due = attempt();
        assertThat(due.earliestMs()).isEqualTo(clock.nowMs() + 90 * MINUTE_MS);
        assertThat(due.usualMs()).isGreaterThanOrEqualTo(due.earliestMs());
        service.answers(429);
        assertThat(attempt().earliestMs()).isEqualTo(clock.nowMs() + HOUR_MS);
        service.answers(FakeService.retryAfter(503, 1));
        assertThat(attempt().earliestMs()).isEqualTo(clock.nowMs() + 10 * MINUTE_MS);
    }

    @Test
    void aVersionThatWillBeTakenAwayIsStillUsed() {
        service.answers(FakeService.freshFor(203, Samples.text("compact.json"), 1800));
        attempt();
        assertThat(forecasts.newest()).isPresent();
        assertThat(forecasts.trouble()).isEmpty();
    }

    @Test
    void tunnelsDoNotAskInTheSameSecond() {
        service.answersWith(Samples.text("compact.json"));
        List<Long> usual = new ArrayList<>();
        for (int i = 0; i < 200; i++) {
            usual.add(forecastsOf("tunnel-" + i).attempt(clock.nowMs()).usualMs() / 1000);
        }
        assertThat(usual.stream().distinct().count()).isGreaterThan(100);
        assertThat(forecastsOf("tunnel-7").attempt(clock.nowMs()).usualMs() / 1000)
                .isEqualTo(usual.get(7));
    }

    private ServiceForecasts forecastsOf(String site) {
        return new ServiceForecasts("api.met.no", service, new Waits("forecasts of " + site), clock::wall);
    }

    private Due attempt() {
        return forecasts.attempt(clock.nowMs());
    }

    /** Attempts as they fall due for so long, and when each was. */
    private List<Long> outage(double hours) {
        List<Long> attempts = new ArrayList<>();
        long endMs = clock.nowMs() + (long) (hours * HOUR_MS);
        clock.pass(0.5);
        while (clock.nowMs() < endMs) {
            attempts.add(clock.nowMs());
            clock.passUntil(attempt().usualMs());
        }
        return attempts;
    }
}
