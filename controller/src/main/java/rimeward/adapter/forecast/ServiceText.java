package rimeward.adapter.forecast;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import rimeward.air.MoistAir;
import rimeward.air.RelativeHumidity;
import rimeward.core.outlook.Forecast;
import rimeward.json.Excerpt;
import rimeward.json.Json;

/**
 * A reply in the JSON of MET Norway's Locationforecast 2.0 (api.met.no/doc/ForecastJSON): air_temperature and dew_point_temperature in °C,
 * wind_speed in m/s, relative_humidity and cloud_area_fraction in %. Its short form ("compact") has the humidity and no dew point.
 */
final class ServiceText {
    private static final double LEAST_RH_PERCENT = 1;
    private static final double MOST_RH_PERCENT = 105; // rounded up by others

    private static final Map<String, String> UNITS = new TreeMap<>(Map.of(
            "air_temperature", "celsius",
            "dew_point_temperature", "celsius",
            "relative_humidity", "%",
            "wind_speed", "m/s",
            "cloud_area_fraction", "%"));

    private ServiceText() {}

    static Forecast read(String text, String source) throws Unreadable {
        return read(Members.read(text), source);
    }

    static Forecast read(Json json, String source) throws Unreadable {
        Json meta = Members.inner(json, "properties", "meta");
        units(meta);
        long issuedS = Members.time("properties.meta", meta, "updated_at");
        List<Forecast.Point> points = new ArrayList<>();
        for (Json step : Members.list(json, "properties", "timeseries")) {
            points.add(point("timeseries " + (points.size() + 1), step));
        }
        return Plausible.forecast(source, issuedS, points);
    }

    /** Where it says them, they must be those that the format's description names. */
    private static void units(Json meta) throws Unreadable {
        for (Map.Entry<String, String> each : UNITS.entrySet()) {
            Json said =
                    meta.get("units").flatMap(units -> units.get(each.getKey())).orElse(meta);
            if (said instanceof Json.Text unit && !unit.text().equals(each.getValue())) {
                throw new Unreadable(
                        each.getKey() + " is told in " + Excerpt.of(unit.text()) + ", not in " + each.getValue());
            }
        }
    }

    private static Forecast.Point point(String where, Json step) throws Unreadable {
        Json details = Members.inner(step, "data", "instant", "details");
        double airC = Members.number(where, details, "air_temperature");
        OptionalDouble cloudPercent = Members.find(where, details, "cloud_area_fraction");
        return Plausible.point(
                where,
                Members.time(where, step, "time"),
                airC,
                dewPointC(where, details, airC),
                Members.find(where, details, "wind_speed"),
                cloudPercent.isPresent()
                        ? OptionalDouble.of(cloudPercent.getAsDouble() / 100)
                        : OptionalDouble.empty());
    }

    private static OptionalDouble dewPointC(String where, Json details, double airC) throws Unreadable {
        OptionalDouble saidC = Members.find(where, details, "dew_point_temperature");
        OptionalDouble rhPercent = Members.find(where, details, "relative_humidity");
        return saidC.isPresent() || rhPercent.isEmpty()
                ? saidC
                : OptionalDouble.of(dewPointC(where, airC, rhPercent.getAsDouble()));
    }

    /** From humidity over water, as weather services report it (WMO-No. 8). */
    static double dewPointC(String where, double airC, double rhPercent) throws Unreadable {
        if (!(rhPercent >= LEAST_RH_PERCENT && rhPercent <= MOST_RH_PERCENT)) {
            throw new Unreadable(where + ": a relative humidity of " + rhPercent + " % is none");
        }
        return MoistAir.dewPointC(RelativeHumidity.vapourFromOverWaterPa(airC, StrictMath.min(100, rhPercent)));
    }
}
