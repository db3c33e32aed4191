package rimeward.sim.weather;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import rimeward.air.MoistAir;
import rimeward.air.Saturation;

/**
 * Brings the columns of a record to one series at {@link WeatherSeries#USUAL_STEP_S}. Recorded values are joined by straight
 * lines: air, wind, pressure, cloud, radiation and vapour pressure, the last capped at saturation over water at the air
 * temperature of the moment.
 */
final class Assembly {
    private static final double SEA_LEVEL_PA = 101_325;

    private final Map<Quantity, Track> tracks = new EnumMap<>(Quantity.class);
    private final boolean byDays;
    private final Track airC;
    private final Track vapourPa;
    private final Place place;
    private final Map<Quantity, ColumnMap.Assumption> assumed;
    final List<String> notes = new ArrayList<>();

    /** Columns must hold air (or daily extremes) and a reading or assumption for each thing that cannot be derived. */
    Assembly(Map<Quantity, ColumnReader> columns, Place place, Map<Quantity, ColumnMap.Assumption> assumed) {
        this(tracks(columns), assumed, place);
    }

    /** Of columns that no file holds, all that are needed among them. */
    Assembly(Map<Quantity, Track> columns, Place place) {
        this(columns, Map.of(), place);
    }

    private Assembly(Map<Quantity, Track> columns, Map<Quantity, ColumnMap.Assumption> assumed, Place place) {
        tracks.putAll(columns);
        this.place = place;
        this.assumed = assumed;
        this.byDays = tracks.containsKey(Quantity.LOWEST_AIR);
        this.airC = byDays ? fromExtremes() : track(Quantity.AIR);
        this.vapourPa = vapourPa();
        if (!tracks.containsKey(Quantity.RADIATION)) {
            notes.add("radiation is not in the file: from the sun's height (Haurwitz) and cloud (Kasten & Czeplak)");
        }
        if (!tracks.containsKey(Quantity.PRESSURE) && !tracks.containsKey(Quantity.SEA_LEVEL_PRESSURE)) {
            notes.add("pressure is not in the file: the usual one of the altitude");
        }
        assumed.forEach((quantity, assumption) -> {
            if (!tracks.containsKey(quantity)) {
                notes.add(quantity.key() + " is not in the file: " + assumption.told() + " assumed throughout");
            }
        });
    }

    private static Map<Quantity, Track> tracks(Map<Quantity, ColumnReader> columns) {
        Map<Quantity, Track> tracks = new EnumMap<>(Quantity.class);
        columns.forEach((quantity, column) -> tracks.put(quantity, column.track()));
        return tracks;
    }

    private Track track(Quantity quantity) {
        Track track = tracks.get(quantity);
        if (track == null) {
            throw new IllegalStateException("no column for " + quantity.key());
        }
        return track;
    }

    private Track fromExtremes() {
        var lowest = track(Quantity.LOWEST_AIR);
        var highest = track(Quantity.HIGHEST_AIR);
        var days = new ArrayList<PartonLogan.Day>();
        for (int i = 0; i < lowest.size(); i++) {
            days.add(new PartonLogan.Day(lowest.epochS(i), lowest.value(i), highest.at(lowest.epochS(i))));
        }
        notes.add("air temperature between each day's recorded extremes follows Parton & Logan (1981)");
        return PartonLogan.expand(place, days);
    }

    private Track vapourPa() {
        var vapour = new Track();
        Track dew = tracks.get(Quantity.DEW_POINT);
        Track humidity = tracks.get(Quantity.HUMIDITY);
        if (dew != null) {
            for (int i = 0; i < dew.size(); i++) {
                vapour.add(dew.epochS(i), Saturation.overWaterPa(dew.value(i)));
            }
        } else if (humidity != null) {
            for (int i = 0; i < humidity.size(); i++) {
                double saturatedPa = Saturation.overWaterPa(airC.at(humidity.epochS(i)));
                vapour.add(humidity.epochS(i), humidity.value(i) * saturatedPa);
            }
        } else {
            Track lowest = track(Quantity.LOWEST_AIR);
            for (int i = 0; i < lowest.size(); i++) {
                vapour.add(lowest.epochS(i), Saturation.overWaterPa(lowest.value(i)));
            }
            notes.add(
                    "humidity is not in the file: the dew point is taken as each day's lowest temperature (FAO-56, 1998,"
                            + " eq. 48)");
        }
        return vapour;
    }

    /**
     * The time for which everything is known. Daily values, and radiation, which is a mean over the hour, reach half a step
     * past their own time.
     */
    Span known() {
        long from = airC.epochS(0);
        long until = airC.epochS(airC.size() - 1);
        for (var track : tracks.entrySet()) {
            if (!byDays && track.getKey() != Quantity.RADIATION) {
                from = Math.max(from, track.getValue().epochS(0));
                until = Math.min(until, track.getValue().epochS(track.getValue().size() - 1));
            }
        }
        return new Span(from, until);
    }

    /** The series over a time that is known. */
    WeatherSeries series(String provenance, Span span) {
        int step = WeatherSeries.USUAL_STEP_S;
        long from = WeatherSeries.usualStepFrom(span.fromEpochS());
        var samples = new ArrayList<WeatherSample>();
        for (long t = from; t <= span.untilEpochS(); t += step) {
            samples.add(sample(t));
        }
        return WeatherSeries.of(provenance, from, step, samples);
    }

    private WeatherSample sample(long epochS) {
        double air = airC.at(epochS);
        double vapour = Math.min(vapourPa.at(epochS), Saturation.overWaterPa(air));
        double wind = at(Quantity.WIND, epochS);
        double cloud = at(Quantity.CLOUD, epochS);
        Track sun = tracks.get(Quantity.RADIATION);
        if (sun == null) {
            return WeatherSample.withoutRecordedSun(place, epochS, air, vapour, wind, pressurePa(epochS), cloud);
        }
        return new WeatherSample(
                air, vapour, wind, pressurePa(epochS), cloud, sun.at(epochS), Sky.skyC(air, vapour, cloud));
    }

    private double at(Quantity quantity, long epochS) {
        Track track = tracks.get(quantity);
        ColumnMap.Assumption assumption = assumed.get(quantity);
        return track == null && assumption != null
                ? assumption.value()
                : track(quantity).at(epochS);
    }

    private double pressurePa(long epochS) {
        double usualPa = MoistAir.pressurePa(place.altitudeM());
        if (tracks.containsKey(Quantity.PRESSURE)) {
            return at(Quantity.PRESSURE, epochS);
        }
        Track seaLevel = tracks.get(Quantity.SEA_LEVEL_PRESSURE);
        return seaLevel == null ? usualPa : usualPa * seaLevel.at(epochS) / SEA_LEVEL_PA;
    }
}
