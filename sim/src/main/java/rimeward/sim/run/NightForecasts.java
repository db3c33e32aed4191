package rimeward.sim.run;

import java.time.ZoneOffset;
import rimeward.core.outlook.Outlook;
import rimeward.core.reading.Tick;
import rimeward.port.ForecastSource;
import rimeward.sim.fault.FaultClock;
import rimeward.sim.fault.FaultKind;
import rimeward.sim.weather.ForecastModel;
import rimeward.sim.weather.NightForecast;
import rimeward.sim.weather.WeatherSeries;

/** A forecast of the coming night each evening at five, kept until eight in the morning, as wrong as the model makes it. */
final class NightForecasts implements ForecastSource {
    private static final long DAY_S = 86_400;
    private static final long EVENING_S = 17 * 3600;
    private static final long MORNING_S = 8 * 3600;

    private final FaultClock faults;
    private final WeatherSeries weather;
    private final ForecastModel model;
    private final long offsetS;
    private long night = -1;
    private double lowestC;

    NightForecasts(WeatherSeries weather, ForecastModel model, ZoneOffset offset, FaultClock faults) {
        this.faults = faults;
        this.weather = weather;
        this.model = model;
        offsetS = offset.getTotalSeconds();
    }

    @Override
    public Outlook latest(Tick now) {
        long localS = now.wall().epochS() + offsetS;
        long secondOfDay = Math.floorMod(localS, DAY_S);
        if ((secondOfDay >= MORNING_S && secondOfDay < EVENING_S) || faults.isActive(FaultKind.FORECAST_LOST)) {
            return Outlook.NONE;
        }
        long day = Math.floorDiv(localS, DAY_S);
        long evening = secondOfDay >= EVENING_S ? day : day - 1;
        long endsS = (evening + 1) * DAY_S + MORNING_S;
        if (evening != night) {
            night = evening;
            lowestC = issue(evening * DAY_S + EVENING_S - offsetS, endsS - offsetS);
        }
        return new Outlook.Night(night, lowestC, model.spreadK(), endsS - localS);
    }

    /** A night that begins before the weather, or ends after it, is forecast for the part that is known. */
    private double issue(long fromEpochS, long untilEpochS) {
        long from = Math.max(fromEpochS, weather.startEpochS());
        long until = Math.min(untilEpochS, weather.endEpochS());
        NightForecast forecast = model.issue(weather, from, until);
        return forecast.lowestC();
    }
}
