package rimeward.sim.sweep;

import java.util.ArrayList;
import java.util.List;
import rimeward.sim.fault.SeededStream;
import rimeward.sim.weather.HoursOfDays;
import rimeward.sim.weather.Place;

/**
 * Makes winters' weather out of what was recorded, by chance. Days come in one of two ways: recorded ones in blocks of three, drawn anew (the
 * moving-block bootstrap of Künsch, Annals of Statistics 17 (1989) 1217–1241), or new ones by {@link DayFit}. Their hours come by Parton &amp;
 * Logan (1981) and depart from it as recorded hours do ({@link HourFit}). All of it is then shifted to the cold that the tunnel is to meet.
 */
public final class WeatherMaker {
    private static final int BLOCK_DAYS = 3;

    /** A day has some swing and some air, and a gust is no hour's mean. Own choice. */
    private static final double LEAST_SWING_K = 1;

    private static final double LEAST_WIND_MPERS = 0.2;
    private static final double MOST_WIND_MPERS = 20;

    private final List<double[][]> snaps;
    private final DayFit dayFit;
    private final HourFit hourFit;

    public WeatherMaker(RecordedWeather recorded) {
        snaps = recorded.snaps();
        dayFit = new DayFit(snaps);
        hourFit = HourFit.of(recorded.nights());
    }

    /**
     * @param coldestC what the coldest hour comes to, °C
     * @param noonEpochS when it begins, a noon by UTC
     * @param days how many, and some hours more
     */
    HourlyWeather make(double coldestC, Place place, long noonEpochS, int days, SeededStream luck) {
        boolean recorded = luck.below(2) == 0;
        double[][] rows = recorded ? blocks(days + 2, luck) : dayFit.days(days + 2, luck);
        double[] lowestC = new double[rows.length];
        double[] highestC = new double[rows.length];
        for (int i = 0; i < rows.length; i++) {
            lowestC[i] = rows[i][0];
            highestC[i] = Math.max(rows[i][1], rows[i][0] + LEAST_SWING_K);
        }
        int hours = 24 * days + 2;
        double[] airC = HoursOfDays.airC(place, noonEpochS, lowestC, highestC, noonEpochS, hours);
        add(hourFit.airK().anomalies(hours, luck), airC);
        shiftTo(coldestC, airC);
        return new HourlyWeather(
                recorded ? "recorded days drawn anew" : "days by a process fitted to recorded ones",
                place,
                noonEpochS,
                hourly(rows, airC, luck));
    }

    private double[][] blocks(int days, SeededStream luck) {
        double[][] drawn = new double[days][];
        for (int t = 0; t < days; t += BLOCK_DAYS) {
            double[][] snap = snaps.get(luck.below(snaps.size()));
            int first = luck.below(Math.max(1, snap.length - BLOCK_DAYS + 1));
            for (int i = 0; i < BLOCK_DAYS && t + i < days; i++) {
                drawn[t + i] = snap[Math.min(snap.length - 1, first + i)];
            }
        }
        return drawn;
    }

    /** Dew point, wind and cloud beside the air, hour by hour; some winters are damper than others. */
    private List<double[]> hourly(double[][] days, double[] airC, SeededStream luck) {
        double dampness = luck.between(0, 1.3);
        double[] depressionK = hourFit.depressionK().anomalies(airC.length, luck);
        double[] gust = hourFit.windRatio().anomalies(airC.length, luck);
        double[] drift = hourFit.cloud().anomalies(airC.length, luck);
        List<double[]> hours = new ArrayList<>();
        for (int i = 0; i < airC.length; i++) {
            double[] day = days[(i + 12) / 24]; // the first hour is a noon
            double belowK = Math.max(0, dampness * hourFit.depressionK().mean() + depressionK[i]);
            double windMPerS = Math.max(LEAST_WIND_MPERS, day[2]) * (1 + gust[i]);
            hours.add(new double[] {
                airC[i],
                airC[i] - belowK,
                Math.max(LEAST_WIND_MPERS, Math.min(MOST_WIND_MPERS, windMPerS)),
                Math.max(0, Math.min(1, day[3] + drift[i]))
            });
        }
        return hours;
    }

    private static void shiftTo(double coldestC, double[] airC) {
        double lowestC = airC[0];
        for (double value : airC) {
            lowestC = Math.min(lowestC, value);
        }
        for (int i = 0; i < airC.length; i++) {
            airC[i] += coldestC - lowestC;
        }
    }

    private static void add(double[] more, double[] to) {
        for (int i = 0; i < to.length; i++) {
            to[i] += more[i];
        }
    }
}
