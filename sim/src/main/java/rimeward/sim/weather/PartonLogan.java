package rimeward.sim.weather;

import java.util.List;

/**
 * Air temperature through the day from its lowest and highest: a sine from the minimum, about sunrise, to sunset, and an
 * exponential fall through the night to the next day's minimum.
 *
 * <p>Source: Parton &amp; Logan, "A model for diurnal variation in soil and air temperature", Agricultural Meteorology 23
 * (1981) 205–216, with its constants for air at 1.5 m. Their fall stops a ninth of the way above the minimum and then jumps;
 * like Goudriaan &amp; van Laar (1994) we stretch it so that it arrives.
 */
final class PartonLogan {
    private static final double WARMEST_AFTER_NOON_S = 1.86 * 3600; // a
    private static final double NIGHT_FALL = 2.20; // b
    private static final double COLDEST_AFTER_SUNRISE_S = -0.17 * 3600; // c

    private PartonLogan() {}

    /** One day's record; the time is any near its noon. */
    record Day(long noonEpochS, double lowestC, double highestC) {}

    /** From the first day's minimum to the last day's sunset, at the usual step of series. Days must follow one another. */
    static Track expand(Place place, List<Day> days) {
        var track = new Track();
        for (int i = 0; i < days.size(); i++) {
            var today = new Curve(place, days.get(i));
            long until = today.sunsetS;
            if (i + 1 < days.size()) {
                var next = new Curve(place, days.get(i + 1));
                today.nightUntil(next);
                until = next.coldestS;
            }
            int step = WeatherSeries.USUAL_STEP_S;
            for (long t = WeatherSeries.usualStepFrom(today.coldestS); t < until; t += step) {
                track.add(t, today.airC(t));
            }
        }
        return track;
    }

    private static final class Curve {
        private final Day day;
        private final long coldestS;
        private final long sunsetS;
        private final double halfSineS;
        private final double sunsetC;
        private long nightS = 1;
        private double nextLowestC;

        Curve(Place place, Day day) {
            this.day = day;
            var light = Daylight.around(place, day.noonEpochS());
            coldestS = light.sunriseEpochS() + StrictMath.round(COLDEST_AFTER_SUNRISE_S);
            sunsetS = light.sunsetEpochS();
            halfSineS = light.lengthS() + 2 * WARMEST_AFTER_NOON_S;
            sunsetC = byDayC(sunsetS);
            nextLowestC = day.lowestC();
        }

        void nightUntil(Curve next) {
            nightS = next.coldestS - sunsetS;
            nextLowestC = next.day.lowestC();
        }

        double airC(long epochS) {
            return epochS <= sunsetS ? byDayC(epochS) : byNightC(epochS);
        }

        private double byDayC(long epochS) {
            double rise = StrictMath.sin(StrictMath.PI * (epochS - coldestS) / halfSineS);
            return day.lowestC() + (day.highestC() - day.lowestC()) * rise;
        }

        private double byNightC(long epochS) {
            double end = StrictMath.exp(-NIGHT_FALL);
            double left = (StrictMath.exp(-NIGHT_FALL * (epochS - sunsetS) / nightS) - end) / (1 - end);
            return nextLowestC + (sunsetC - nextLowestC) * left;
        }
    }
}
