package rimeward.sim.sweep;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import rimeward.air.MoistAir;
import rimeward.sim.weather.Place;
import rimeward.sim.weather.WeatherCursor;
import rimeward.sim.weather.WeatherSeries;

/**
 * Weather by the hour, as a file that explains itself.
 *
 * @param says how it came about
 * @param rows one an hour: air °C, dew point °C, wind m/s, cloud 0…1
 */
record HourlyWeather(String says, Place place, long fromEpochS, List<double[]> rows) {
    private static final int HOUR_S = 3600;
    private static final String HEADER = "time,air °C,dew-point °C,wind m/s,cloud fraction";

    /** A part of a series; what lies between two hours is left out. */
    static HourlyWeather of(WeatherSeries series, Place place, long fromEpochS, long untilEpochS) {
        int hours = (int) Math.min(
                (untilEpochS - fromEpochS + HOUR_S - 1) / HOUR_S + 1, (series.endEpochS() - fromEpochS) / HOUR_S + 1);
        List<double[]> rows = new ArrayList<>();
        WeatherCursor at = series.cursor();
        for (int i = 0; i < hours; i++) {
            at.moveTo(fromEpochS + (long) i * HOUR_S);
            double dewC = Math.min(at.outsideAirC(), MoistAir.dewPointC(at.vapourPa()));
            rows.add(new double[] {at.outsideAirC(), dewC, at.windMPerS(), at.cloudFraction()});
        }
        return new HourlyWeather(series.provenance(), place, fromEpochS, rows);
    }

    /** As CSV. */
    String text() {
        StringBuilder out =
                new StringBuilder("# Made, not recorded: ").append(says).append(".\n");
        out.append("# place: latitude ").append(Toml.number(place.latitudeDeg()));
        out.append(", longitude ").append(Toml.number(place.longitudeDeg()));
        out.append(", altitude ").append(Toml.number(place.altitudeM())).append(" m\n");
        out.append(HEADER).append('\n');
        for (int i = 0; i < rows.size(); i++) {
            out.append(Instant.ofEpochSecond(fromEpochS + (long) i * HOUR_S));
            for (double value : rows.get(i)) {
                out.append(',').append(rounded(value));
            }
            out.append('\n');
        }
        return out.toString();
    }

    /** So coarse that a dew point which comes back by way of the vapour is written as it was: files written twice stay the same. */
    private static String rounded(double value) {
        return Toml.number(StrictMath.rint(value * 100) / 100);
    }
}
