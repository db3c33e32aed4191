package rimeward.service;

import java.util.Optional;
import java.util.function.Function;
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

    /** What was found off the tick counts so long: a few of its looks may fail. Own choice. */
    private static final long FRESH_S = 3600;

    private final Forecasts forecasts;
    private final Site site;
    private Optional<Ahead> ahead = Optional.empty();
    private long lookedS = Long.MIN_VALUE;
    private volatile Found found = new Found(Long.MIN_VALUE / 2, Optional.empty());

    /** A night that is forecast. */
    private record Ahead(long night, Lowest lowest, long endEpochS) {}

    /** What was found off the tick, and when. */
    private record Found(long foundS, Optional<Ahead> ahead) {}

    public NightsAhead(Forecasts forecasts, Site site) {
        this.forecasts = forecasts;
        this.site = site;
    }

    /** While the time of day is not known, a forecast's hours mean nothing. */
    @Override
    public Outlook latest(Tick now) {
        if (!now.wall().trusted()) {
            return Outlook.NONE;
        }
        long nowS = now.wall().epochS();
        Found handed = found;
        if (nowS >= handed.foundS && nowS < handed.foundS + FRESH_S) {
            return outlook(handed.ahead, nowS);
        }
        if (lookedS == Long.MIN_VALUE || nowS < lookedS || nowS >= lookedS + ANEW_S) {
            ahead = look(nowS);
            lookedS = nowS;
        }
        return outlook(ahead, nowS);
    }

    private static Outlook outlook(Optional<Ahead> night, long nowS) {
        return night.filter(ahead -> ahead.endEpochS > nowS)
                .map(ahead -> told(ahead, nowS))
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

    /**
     * What was found of the coming hours off the tick, with all that is known here: it goes before what is looked up here for as long as it is
     * fresh. For any thread.
     */
    public void expect(Course course, long nowS) {
        boolean known = !(course.basis() instanceof Course.Basis.Guess);
        found = new Found(nowS, known ? ahead(nowS, any -> Optional.of(course)) : Optional.empty());
    }

    private Optional<Ahead> look(long nowS) {
        return ahead(
                nowS,
                sun -> forecasts
                        .newest()
                        .flatMap(said -> new CourseMaker(sun)
                                .from(
                                        nowS,
                                        OutsideAir.UNSEEN,
                                        Optional.of(said),
                                        ForecastErrors.USUAL,
                                        NightDiary.EMPTY))
                        .filter(course -> course.basis() instanceof Course.Basis.Forecasted));
    }

    private Optional<Ahead> ahead(long nowS, Function<SunTimes, Optional<Course>> courses) {
        SunTimes sun = SunTimes.of(site, nowS);
        Optional<NightSpan> span = sun.night(nowS);
        if (span.isEmpty() || nowS >= span.get().sunriseEpochS() + AFTER_SUNRISE_S) {
            return Optional.empty();
        }
        long endS = span.get().sunriseEpochS() + AFTER_SUNRISE_S;
        long night = Math.floorDiv(span.get().sunsetEpochS(), DAY_S);
        return courses.apply(sun).map(course -> new Ahead(night, course.lowest(nowS, endS), endS));
    }

    @Override
    public boolean askAnew() {
        forecasts.askAnew();
        lookedS = Long.MIN_VALUE;
        return !(site.forecasting() instanceof Forecasting.None);
    }
}
