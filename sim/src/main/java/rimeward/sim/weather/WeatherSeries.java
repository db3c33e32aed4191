package rimeward.sim.weather;

import java.util.List;
import rimeward.air.MoistAir;

/**
 * Immutable weather at equal steps of time, safe to share between threads; each reader takes its own {@link WeatherCursor}.
 *
 * <p>Between two samples every quantity is linear in time: air and sky temperature, vapour pressure, humidity ratio, wind,
 * pressure, cloud and radiation. The curves that are not linear (sun, sky, saturation) are therefore worked out at the
 * samples, and makers of a series choose steps short enough for them; {@link #USUAL_STEP_S} keeps to the clear-sky radiation
 * curve within 5 W/m² at sunrise and sunset, and within half of one in between.
 */
public final class WeatherSeries {
    /** Ten minutes: the step to which importers and recipes bring their weather. */
    public static final int USUAL_STEP_S = 600;

    final double[] outsideAirC;
    final double[] vapourPa;
    final double[] humidityKgPerKg;
    final double[] windMPerS;
    final double[] pressurePa;
    final double[] cloudFraction;
    final double[] globalRadiationWPerM2;
    final double[] skyC;
    private final long startEpochS;
    private final int stepS;
    private final String provenance;

    private WeatherSeries(String provenance, long startEpochS, int stepS, int samples) {
        this.provenance = provenance;
        this.startEpochS = startEpochS;
        this.stepS = stepS;
        outsideAirC = new double[samples];
        vapourPa = new double[samples];
        humidityKgPerKg = new double[samples];
        windMPerS = new double[samples];
        pressurePa = new double[samples];
        cloudFraction = new double[samples];
        globalRadiationWPerM2 = new double[samples];
        skyC = new double[samples];
    }

    /**
     * A series from its samples.
     *
     * @param provenance one line that tells a reader of a report where this weather comes from: "recorded …", "made …"
     * @param startEpochS time of the first sample, seconds since 1970-01-01 UTC
     * @param stepS seconds from one sample to the next
     * @param samples at least two
     */
    public static WeatherSeries of(String provenance, long startEpochS, int stepS, List<WeatherSample> samples) {
        if (samples.size() < 2 || stepS < 1) {
            throw new IllegalArgumentException("a weather series needs two samples and a step of 1 s or more, not "
                    + samples.size() + " and " + stepS + " s");
        }
        var series = new WeatherSeries(provenance, startEpochS, stepS, samples.size());
        for (int i = 0; i < samples.size(); i++) {
            series.put(i, samples.get(i));
        }
        return series;
    }

    /** The same weather for all of {@code lengthS} seconds. */
    public static WeatherSeries constant(long startEpochS, int lengthS, WeatherSample always) {
        return of("made: constant weather", startEpochS, lengthS, List.of(always, always));
    }

    /** The first whole {@link #USUAL_STEP_S} at or after a time. */
    static long usualStepFrom(long epochS) {
        return -Math.floorDiv(-epochS, (long) USUAL_STEP_S) * USUAL_STEP_S;
    }

    private void put(int i, WeatherSample s) {
        outsideAirC[i] = s.outsideAirC();
        vapourPa[i] = s.vapourPa();
        humidityKgPerKg[i] = MoistAir.humidityRatioKgPerKg(s.vapourPa(), s.pressurePa());
        windMPerS[i] = s.windMPerS();
        pressurePa[i] = s.pressurePa();
        cloudFraction[i] = s.cloudFraction();
        globalRadiationWPerM2[i] = s.globalRadiationWPerM2();
        skyC[i] = s.skyC();
    }

    /** Where this weather comes from, in one line for reports. */
    public String provenance() {
        return provenance;
    }

    public long startEpochS() {
        return startEpochS;
    }

    /** The last second this series knows. */
    public long endEpochS() {
        return startEpochS + (long) stepS * (samples() - 1);
    }

    public int stepS() {
        return stepS;
    }

    public int samples() {
        return outsideAirC.length;
    }

    /** The i-th sample, from 0, as it was given. */
    public WeatherSample sample(int i) {
        return new WeatherSample(
                outsideAirC[i],
                vapourPa[i],
                windMPerS[i],
                pressurePa[i],
                cloudFraction[i],
                globalRadiationWPerM2[i],
                skyC[i]);
    }

    /** Lowest outside temperature in °C from one time to another, both inside the series. */
    public double lowestOutsideAirC(long fromEpochS, long toEpochS) {
        var cursor = cursor();
        cursor.moveTo(toEpochS);
        double lowestC = cursor.outsideAirC();
        // Linear between samples, so the lowest is at an end or at a sample.
        for (long t = fromEpochS; t < toEpochS; t = nextSampleEpochS(t)) {
            cursor.moveTo(t);
            lowestC = Math.min(lowestC, cursor.outsideAirC());
        }
        return lowestC;
    }

    private long nextSampleEpochS(long epochS) {
        return startEpochS + (Math.floorDiv(epochS - startEpochS, (long) stepS) + 1) * stepS;
    }

    /** A new reader, standing at the start. */
    public WeatherCursor cursor() {
        return new WeatherCursor(this);
    }
}
