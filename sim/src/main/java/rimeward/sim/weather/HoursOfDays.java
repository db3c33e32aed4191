package rimeward.sim.weather;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Hourly weather that is made instead of read, by the ways in which files are read. */
public final class HoursOfDays {
    private static final long HOUR_S = 3600;
    private static final long DAY_S = 86_400;

    private HoursOfDays() {}

    /**
     * By Parton &amp; Logan (1981).
     *
     * @param firstNoonEpochS noon of the first day
     * @param lowestC one a day, °C
     * @param highestC one a day, °C
     * @param fromEpochS first hour; before the first morning and after the last sunset the nearest known value stays
     * @param hours how many
     */
    public static double[] airC(
            Place place, long firstNoonEpochS, double[] lowestC, double[] highestC, long fromEpochS, int hours) {
        List<PartonLogan.Day> days = new ArrayList<>();
        for (int i = 0; i < lowestC.length; i++) {
            days.add(new PartonLogan.Day(firstNoonEpochS + i * DAY_S, lowestC[i], highestC[i]));
        }
        Track track = PartonLogan.expand(place, days);
        double[] airC = new double[hours];
        for (int i = 0; i < hours; i++) {
            airC[i] = track.at(fromEpochS + i * HOUR_S);
        }
        return airC;
    }

    /**
     * A series from what a file of hours would hold, as the importer makes it.
     *
     * @param rows one an hour: air °C, dew point °C, wind m/s, cloud 0…1
     */
    public static WeatherSeries series(String provenance, Place place, long fromEpochS, List<double[]> rows) {
        Map<Quantity, Track> tracks = new EnumMap<>(Quantity.class);
        List<Quantity> columns = List.of(Quantity.AIR, Quantity.DEW_POINT, Quantity.WIND, Quantity.CLOUD);
        for (int j = 0; j < columns.size(); j++) {
            Track track = new Track();
            for (int i = 0; i < rows.size(); i++) {
                track.add(fromEpochS + i * HOUR_S, rows.get(i)[j]);
            }
            tracks.put(columns.get(j), track);
        }
        Assembly assembly = new Assembly(tracks, place);
        return assembly.series(provenance, assembly.known());
    }
}
