package rimeward.sim.weather;

import java.util.ArrayList;
import java.util.Random;
import rimeward.air.MoistAir;
import rimeward.air.Saturation;

/**
 * Made winter weather, for demonstrations and property tests; never for a check. The same recipe gives the same bytes.
 *
 * <p>Four slow, seeded processes (front, cloud, dryness, wind) walk around their means. The day swings around the front's
 * temperature, warmest at 14:30 solar time, the more the clearer the sky. All numbers are common practice, no source.
 *
 * @param place where: gives sun and pressure
 * @param startEpochS first second; use local noon, so that nights stay whole
 * @param days length, 1…400
 * @param seed names one weather among all that this recipe can make
 * @param meanAirC mean temperature of the period
 * @param frontSpreadK standard deviation of the daily mean around it
 * @param clearSwingK from the coldest to the warmest hour of a cloudless day
 * @param dewDepressionK mean distance of the dew point below the daily mean; the air is never above saturation
 * @param cloudFraction mean cloud
 * @param windMPerS mean wind
 */
public record Recipe(
        Place place,
        long startEpochS,
        int days,
        long seed,
        double meanAirC,
        double frontSpreadK,
        double clearSwingK,
        double dewDepressionK,
        double cloudFraction,
        double windMPerS) {
    private static final int HOUR_S = 3600;
    private static final double DAY_S = 86_400;
    private static final double WARMEST_AFTER_NOON_S = 2.5 * HOUR_S;
    private static final double FRONT_MEMORY_H = 48;
    private static final double CLOUD_MEMORY_H = 9;
    private static final double DRYNESS_MEMORY_H = 24;
    private static final double WIND_MEMORY_H = 8;
    private static final double SWING_UNDER_CLOUD = 0.3; // part of the clear day's swing that full cloud leaves

    public Recipe {
        Limits.require("days", days, 1, 400);
        Limits.require("meanAirC", meanAirC, -30, 30);
        Limits.require("frontSpreadK", frontSpreadK, 0, 8);
        Limits.require("clearSwingK", clearSwingK, 0, 20);
        Limits.require("dewDepressionK", dewDepressionK, 0, 15);
        Limits.require("cloudFraction", cloudFraction, 0, 1);
        Limits.require("windMPerS", windMPerS, 0, 15);
    }

    /** An upland winter with frosts: mean 1 °C, fronts of 3 K, the clearest nights near −10 °C. */
    public static Recipe uplandWinter(Place place, long startEpochS, int days, long seed) {
        return new Recipe(place, startEpochS, days, seed, 1, 3, 9, 2.5, 0.55, 3);
    }

    /** Mild, overcast and nearly saturated: mean 6 °C, hardly any day. */
    public static Recipe mildAndDamp(Place place, long startEpochS, int days, long seed) {
        return new Recipe(place, startEpochS, days, seed, 6, 1.5, 6, 1, 0.9, 2);
    }

    /** The weather itself, at {@link WeatherSeries#USUAL_STEP_S}. */
    public WeatherSeries make() {
        var random = new Random(seed); // its algorithm is fixed by the Java documentation
        var front = walk(random, FRONT_MEMORY_H);
        var cloud = walk(random, CLOUD_MEMORY_H);
        var dryness = walk(random, DRYNESS_MEMORY_H);
        var wind = walk(random, WIND_MEMORY_H);
        double pressurePa = MoistAir.pressurePa(place.altitudeM());
        var samples = new ArrayList<WeatherSample>();
        for (long t = startEpochS; t <= endEpochS(); t += WeatherSeries.USUAL_STEP_S) {
            double covered = within(cloudFraction + 0.45 * cloud.at(t), 0, 1);
            double dayC = meanAirC + frontSpreadK * front.at(t);
            double airC = dayC + swingK(t, covered);
            double dewC = Math.min(airC, dayC - dewDepressionK * within(1 + 0.5 * dryness.at(t), 0, 3));
            double breezeMPerS = windMPerS * within(1 + 0.7 * wind.at(t), 0.05, 4);
            samples.add(WeatherSample.withoutRecordedSun(
                    place, t, airC, Saturation.overWaterPa(dewC), breezeMPerS, pressurePa, covered));
        }
        return WeatherSeries.of("made: recipe, seed " + seed, startEpochS, WeatherSeries.USUAL_STEP_S, samples);
    }

    private long endEpochS() {
        return startEpochS + days * (long) DAY_S;
    }

    private double swingK(long epochS, double covered) {
        double solarS = epochS + place.longitudeDeg() / 360 * DAY_S - DAY_S / 2 - WARMEST_AFTER_NOON_S;
        double turn = 2 * StrictMath.PI * (solarS / DAY_S - StrictMath.floor(solarS / DAY_S));
        double clearPart = 1 - (1 - SWING_UNDER_CLOUD) * covered;
        return clearSwingK / 2 * clearPart * StrictMath.cos(turn);
    }

    /** Mean 0, standard deviation 1, forgetting its past with the given memory: one node an hour. */
    private Track walk(Random random, double memoryH) {
        double keep = StrictMath.exp(-1 / memoryH);
        double stir = Math.sqrt(1 - keep * keep);
        var track = new Track();
        double value = random.nextGaussian();
        for (long t = startEpochS; t < endEpochS() + HOUR_S; t += HOUR_S) {
            track.add(t, value);
            value = keep * value + stir * random.nextGaussian();
        }
        return track;
    }

    private static double within(double value, double low, double high) {
        return Math.max(low, Math.min(high, value));
    }
}
