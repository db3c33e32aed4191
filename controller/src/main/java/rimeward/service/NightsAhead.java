package rimeward.service;

import java.time.Instant;
import java.util.Optional;
import rimeward.core.outlook.Course;
import rimeward.core.outlook.CourseMaker;
import rimeward.core.outlook.ForecastErrors;
import rimeward.core.outlook.Lowest;
import rimeward.core.outlook.NightDiary;
import rimeward.core.outlook.NightSpan;
import rimeward.core.outlook.Outlook;
import rimeward.core.outlook.OutsideAir;
import rimeward.core.outlook.SunTimes;
import rimeward.core.reading.Tick;
import rimeward.port.ForecastSource;
import rimeward.port.Forecasts;
import rimeward.site.Forecasting;
import rimeward.site.Site;

/**
 * The coming night out of an hourly forecast: from noon until an hour after sunrise, from where on it can only get warmer. Between two
 * looks, ten minutes apart, only the time until its end is reckoned anew. For the control loop's thread.
 */
public final class NightsAhead implements ForecastSource {
    private static final long ANEW_S = 600;
    private static final long AFTER_SUNRISE_S = 3600;
    private static final long DAY_S = 86_400;

    private final Forecasts forecasts;
    private final Site site;
    private Optional<Ahead> ahead = Optional.empty();
    private long lookedS = Long.MIN_VALUE;

    /** A night that is forecast. */
    private record Ahead(long night, Lowest lowest, long endEpochS) {}

    public NightsAhead(Forecasts forecasts, Site site) {
        this.forecasts = forecasts;
        this.site = site;
    }

    /** When the sun is up: the place is known, coarsely, where a weather service is asked; elsewhere the clock must do. */
    public static SunTimes sun(Site site, long epochS) {
        return site.forecasting() instanceof Forecasting.FromService from
                ? new SunTimes(from.latitudeDeg(), from.longitudeDeg())
                : SunTimes.byClock(site.zone()
                        .getRules()
                        .getOffset(Instant.ofEpochSecond(epochS))
                        .getTotalSeconds());
    }

    /** While the time of day is not known, a forecast's hours mean nothing. */
    @Override
    public Outlook latest(Tick now) {
        if (!now.wall().trusted()) {
            return Outlook.NONE;
        }
        long nowS = now.wall().epochS();
        if (lookedS == Long.MIN_VALUE || nowS < lookedS || nowS >= lookedS + ANEW_S) {
            ahead = look(nowS);
            lookedS = nowS;
        }
        return ahead.filter(night -> night.endEpochS > nowS)
                .map(night -> told(night, nowS))
                .orElse(Outlook.NONE);
    }

    private static Outlook told(Ahead night, long nowS) {
        try {
            return new Outlook.Night(
                    night.night, night.lowest.airC(), night.lowest.spreadK(), (double) (night.endEpochS - nowS));
        } catch (IllegalArgumentException e) {
            return Outlook.NONE; // no night is like that
        }
    }

    private Optional<Ahead> look(long nowS) {
        SunTimes sun = sun(site, nowS);
        Optional<NightSpan> span = sun.night(nowS);
        if (span.isEmpty() || nowS >= span.get().sunriseEpochS() + AFTER_SUNRISE_S) {
            return Optional.empty();
        }
        long endS = span.get().sunriseEpochS() + AFTER_SUNRISE_S;
        long night = Math.floorDiv(span.get().sunsetEpochS(), DAY_S);
        return forecasts
                .newest()
                .flatMap(said -> new CourseMaker(sun)
                        .from(nowS, OutsideAir.UNSEEN, Optional.of(said), ForecastErrors.USUAL, NightDiary.EMPTY))
                .filter(course -> course.basis() instanceof Course.Basis.Forecasted)
                .map(course -> new Ahead(night, course.lowest(nowS, endS), endS));
    }

    @Override
    public boolean askAnew() {
        forecasts.askAnew();
        lookedS = Long.MIN_VALUE;
        return !(site.forecasting() instanceof Forecasting.None);
    }
}
