package rimeward.app;

import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import rimeward.core.outlook.Course;
import rimeward.core.outlook.Forecast;

/** The weather of the night as {@code tonight} takes it until it is corrected by what was seen here. */
final class TonightCourse {
    /** Spread of an uncorrected forecast at once and a day ahead, K. Own choice. */
    private static final double SPREAD_K = 1.5;

    private static final double SPREAD_A_DAY_K = 1;

    /** A guess: the night cools by so much an hour, at most by so much, and is this uncertain, K. Own choice, rough. */
    private static final double COOLS_K_PER_H = 0.5;

    private static final double COOLS_MOST_K = 7;
    private static final double GUESS_SPREAD_K = 3;

    private static final LocalTime COLDEST = LocalTime.of(7, 0);
    private static final long WARMER_AFTER_S = 7200;
    private static final double HOUR_S = 3600;

    private TonightCourse() {}

    /** From now to the forecast's end. Where it says no dew point, the air is taken to be saturated at its lowest (FAO-56, eq. 48). */
    static Course of(Forecast forecast, long nowS) {
        List<Course.Step> steps = new ArrayList<>();
        double lowestC = Double.POSITIVE_INFINITY;
        for (Forecast.Point point : forecast.points()) {
            lowestC = Math.min(lowestC, point.airC());
        }
        for (Forecast.Point point : forecast.points()) {
            double aheadH = Math.max(0, (point.epochS() - nowS) / HOUR_S);
            steps.add(new Course.Step(
                    point.epochS(),
                    point.airC(),
                    SPREAD_K + SPREAD_A_DAY_K * aheadH / 24,
                    point.dewPointC().orElse(Math.min(point.airC(), lowestC))));
        }
        return new Course(new Course.Basis.Forecasted(forecast.source(), forecast.issuedEpochS(), 0), steps);
    }

    /** Of a night whose lowest alone is forecast. */
    static Course of(String source, long nowS, double outsideC, double lowestC, double spreadK, long endS) {
        long coldestS = nowS + (endS - nowS) * 4 / 5;
        return new Course(
                new Course.Basis.Forecasted(source, nowS, 0),
                List.of(
                        step(nowS, outsideC, spreadK / 2, lowestC),
                        step(coldestS, lowestC, spreadK, lowestC),
                        step(endS, lowestC + 1, spreadK, lowestC)));
    }

    /** With nothing but the outside air of now. */
    static Course guessed(long nowS, double outsideC, ZoneId zone) {
        ZonedDateTime now = Instant.ofEpochSecond(nowS).atZone(zone);
        ZonedDateTime today = now.with(COLDEST);
        long coldestS = (today.isAfter(now.plusHours(1)) ? today : today.plusDays(1)).toEpochSecond();
        double lowestC = outsideC - Math.min(COOLS_MOST_K, COOLS_K_PER_H * (coldestS - nowS) / HOUR_S);
        return new Course(
                new Course.Basis.Guess(),
                List.of(
                        step(nowS, outsideC, 0.5, lowestC),
                        step(coldestS, lowestC, GUESS_SPREAD_K, lowestC),
                        step(coldestS + WARMER_AFTER_S, lowestC + 1, GUESS_SPREAD_K, lowestC)));
    }

    private static Course.Step step(long epochS, double airC, double spreadK, double lowestC) {
        return new Course.Step(epochS, airC, spreadK, Math.min(airC, lowestC));
    }
}
