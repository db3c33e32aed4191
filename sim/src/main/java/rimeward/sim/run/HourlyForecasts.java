package rimeward.sim.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rimeward.air.MoistAir;
import rimeward.core.outlook.Forecast;
import rimeward.port.Forecasts;
import rimeward.sim.weather.ForecastModel;
import rimeward.sim.weather.NightForecast;
import rimeward.sim.weather.WeatherCursor;
import rimeward.sim.weather.WeatherSeries;

/**
 * Hourly forecasts for the whole service in a simulated tunnel: a new one each six hours, two days long, each as wrong as one draw of the
 * model. For any thread; the time is what the loop's thread noted last.
 */
final class HourlyForecasts implements Forecasts {
    private static final long EVERY_S = 21_600;
    private static final long REACH_S = 172_800;
    private static final long HOUR_S = 3600;

    private final WeatherSeries weather;
    private final ForecastModel model;
    private Optional<Forecast> made = Optional.empty();
    private volatile long nowS;
    private volatile boolean lost;

    HourlyForecasts(WeatherSeries weather, ForecastModel model) {
        this.weather = weather;
        this.model = model;
        nowS = weather.startEpochS();
    }

    /** What time it is, and whether the source is out of reach. */
    void note(long epochS, boolean isLost) {
        nowS = epochS;
        lost = isLost;
    }

    @Override
    public synchronized Optional<Forecast> newest() {
        if (lost) {
            return Optional.empty();
        }
        long issuedS = Math.floorDiv(nowS, EVERY_S) * EVERY_S;
        if (made.isEmpty() || made.get().issuedEpochS() != issuedS) {
            made = issue(issuedS);
        }
        return made;
    }

    private Optional<Forecast> issue(long issuedS) {
        List<Forecast.Point> points = new ArrayList<>();
        double errorK = errorK(issuedS);
        WeatherCursor at = weather.cursor();
        long fromS = Math.max(issuedS, (weather.startEpochS() + HOUR_S - 1) / HOUR_S * HOUR_S);
        for (long t = fromS; t <= Math.min(issuedS + REACH_S, weather.endEpochS()); t += HOUR_S) {
            at.moveTo(t);
            double airC = at.outsideAirC() + errorK;
            points.add(new Forecast.Point(
                    t,
                    airC,
                    OptionalDouble.of(Math.min(airC, MoistAir.dewPointC(at.vapourPa()) + errorK)),
                    OptionalDouble.of(at.windMPerS()),
                    OptionalDouble.of(at.cloudFraction())));
        }
        return points.isEmpty() ? Optional.empty() : Optional.of(new Forecast("the simulated sky", issuedS, points));
    }

    private double errorK(long issuedS) {
        long fromS = Math.max(weather.startEpochS(), Math.min(issuedS, weather.endEpochS() - HOUR_S));
        NightForecast night = model.issue(weather, fromS, weather.endEpochS());
        return night.lowestC() - weather.lowestOutsideAirC(fromS, weather.endEpochS());
    }

    @Override
    public void askAnew() {
        // a new one comes by itself
    }

    @Override
    public Optional<String> trouble() {
        return lost ? Optional.of("the simulated sky is not told") : Optional.empty();
    }
}
