package rimeward.outlook;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import rimeward.air.MoistAir;
import rimeward.core.outlook.Forecast;
import rimeward.core.outlook.OutsideAir;
import rimeward.core.outlook.SunTimes;
import rimeward.core.tunnel.Figure;
import rimeward.sim.weather.Place;
import rimeward.sim.weather.Recipe;
import rimeward.sim.weather.WeatherCursor;
import rimeward.sim.weather.WeatherSeries;

/**
 * One made winter at a tunnel in a hollow, with the forecasts that were made for the weather station outside it. All from one seed.
 *
 * <p>Clear, calm nights are colder in the hollow than at the station by up to its depth; the machines hold the floor down to an outside
 * temperature that 3 to 25 of a hundred nights go below, and which is known with an error of half a kelvin. All numbers are own choices,
 * from memory of how wrong forecasts are.
 */
final class HollowWinter {
    static final SunTimes SUN = new SunTimes(54.6, -2.6);
    static final int STEP_S = 600;
    static final int HOUR_S = 3600;
    static final int DAY_S = 86_400;
    private static final Place PLACE = new Place(54.6, -2.6, 310);
    private static final long START_S = 1_383_307_200; // 2013-11-01T12:00Z
    private static final double CAPABILITY_ERROR_K = 0.5;
    private static final int FORECAST_H = 60;
    private static final int ISSUED_EVERY_S = 6 * HOUR_S;
    private static final int ARRIVES_AFTER_S = 2 * HOUR_S;
    private static final int SMOOTH_STEPS = 9;
    private static final double LYING_NIGHTS = 0.005;
    private static final double LIE_K = 6;

    final int nights;
    final double capabilityC;
    final Figure knownCapabilityC;
    private final WeatherSeries weather;
    private final WeatherCursor cursor;
    private final double hollowK;
    private final double offsetK;
    private final boolean[] lies;
    private final double[] airC;
    private final ForecastErrorLuck luck;
    private final long seed;

    HollowWinter(long seed, int nights, double scale) {
        this.seed = seed;
        this.nights = nights;
        Random random = new Random(seed * 7919 + 17);
        double meanC = -1 + 5 * random.nextDouble();
        double frontK = 2.5 + 1.5 * random.nextDouble();
        double swingK = 6 + 5 * random.nextDouble();
        Recipe recipe = new Recipe(PLACE, START_S, nights + 4, seed, meanC, frontK, swingK, 2.5, 0.55, 3);
        weather = recipe.make();
        cursor = weather.cursor();
        hollowK = 4 * random.nextDouble();
        offsetK = 0.15 * random.nextGaussian();
        lies = new boolean[nights + 4];
        for (int i = 0; i < lies.length; i++) {
            lies[i] = random.nextDouble() < LYING_NIGHTS;
        }
        luck = new ForecastErrorLuck(START_S, nights + 4, scale, random);
        airC = new double[weather.samples()];
        for (int i = 0; i < airC.length; i++) {
            long t = START_S + (long) i * STEP_S;
            cursor.moveTo(t);
            airC[i] = hollowC(cursor, t);
        }
        capabilityC = quantileC(0.03 + 0.22 * random.nextDouble());
        knownCapabilityC = new Figure(capabilityC + CAPABILITY_ERROR_K * random.nextGaussian(), CAPABILITY_ERROR_K);
    }

    private double quantileC(double share) {
        double[] lowestC = new double[nights];
        for (int i = 0; i < nights; i++) {
            lowestC[i] = lowestC(i);
        }
        Arrays.sort(lowestC);
        return lowestC[(int) (share * nights)] + 0.01;
    }

    /** The noon (of the clock, near enough) at which a night begins. */
    long noonS(int night) {
        return START_S + (night + 1) * (long) DAY_S;
    }

    double lowestC(int night) {
        double lowestC = Double.POSITIVE_INFINITY;
        for (long t = noonS(night); t < noonS(night + 1); t += STEP_S) {
            lowestC = Math.min(lowestC, airC(t));
        }
        return lowestC;
    }

    /** Outside the tunnel, truly, at a whole step, °C. */
    double airC(long epochS) {
        return airC[(int) ((epochS - START_S) / STEP_S)];
    }

    private double hollowC(WeatherCursor at, long epochS) {
        double calm = 1 / (1 + at.windMPerS() / 2);
        return at.outsideAirC() - hollowK * 2 * calm * (1 - at.cloudFraction()) * SUN.darkness(epochS);
    }

    private double dewC(long epochS) {
        cursor.moveTo(epochS);
        return Math.min(airC(epochS), MoistAir.dewPointC(cursor.vapourPa()));
    }

    /** What the tunnel's sensor shows. */
    OutsideAir.Seen seen(long epochS) {
        boolean lying = lies[(int) ((epochS - START_S) / DAY_S)];
        double airC = airC(epochS) + offsetK + (lying ? LIE_K : 0);
        return new OutsideAir.Seen(epochS, airC, OptionalDouble.of(Math.min(airC, dewC(epochS))));
    }

    /** Whether the morning's forecast has the night's lowest at the station within 2 K. */
    boolean isWithin2K(int night) {
        long noonS = noonS(night);
        double saidC = newest(noonS).points().stream()
                .filter(point -> point.epochS() >= noonS && point.epochS() <= noonS(night + 1))
                .mapToDouble(Forecast.Point::airC)
                .min()
                .orElseThrow();
        return Math.abs(saidC - weather.lowestOutsideAirC(noonS, noonS(night + 1))) <= 2;
    }

    /** Three hours' mean at the station: forecasts know nothing of puffs of air. */
    private double smoothC(long epochS) {
        double sumC = 0;
        for (int i = -SMOOTH_STEPS; i <= SMOOTH_STEPS; i++) {
            long t = epochS + (long) i * STEP_S;
            cursor.moveTo(Math.max(START_S, Math.min(weather.endEpochS(), t)));
            sumC += cursor.outsideAirC();
        }
        return sumC / (2 * SMOOTH_STEPS + 1);
    }

    /** The newest forecast that had arrived by then. */
    Forecast newest(long epochS) {
        long issuedS = Math.floorDiv(epochS - ARRIVES_AFTER_S, (long) ISSUED_EVERY_S) * ISSUED_EVERY_S;
        double[] errorK = luck.errorsK(issuedS, FORECAST_H, seed);
        List<Forecast.Point> points = new ArrayList<>();
        for (int hour = 0; hour <= FORECAST_H; hour++) {
            long t = Math.min(issuedS + hour * (long) HOUR_S, weather.endEpochS());
            if (hour > 0 && t <= points.get(hour - 1).epochS()) {
                break;
            }
            double saidC = smoothC(t) + errorK[hour];
            cursor.moveTo(t);
            double dewC = Math.min(saidC, MoistAir.dewPointC(cursor.vapourPa()) + 0.7 * errorK[hour]);
            points.add(new Forecast.Point(
                    t, saidC, OptionalDouble.of(dewC), OptionalDouble.empty(), OptionalDouble.empty()));
        }
        return new Forecast("made", issuedS, points);
    }
}
