package rimeward.sim.weather;

import java.util.Random;

/**
 * How wrong forecasts of the night's lowest temperature are. The same model says the same about the same evening, whatever
 * else was asked before.
 *
 * @param biasK how much too warm forecasts are on average; a frost hollow below the weather station has a positive one
 * @param spreadK standard deviation of the rest of the error
 * @param seed names one run of luck
 */
public record ForecastModel(double biasK, double spreadK, long seed) {
    public ForecastModel {
        Limits.require("biasK", biasK, -10, 10);
        Limits.require("spreadK", spreadK, 0, 10);
    }

    /** A forecast that is always right. */
    public static ForecastModel perfect() {
        return new ForecastModel(0, 0, 0);
    }

    /** The forecast issued at one time for the time until another; the true weather must reach that far. */
    public NightForecast issue(WeatherSeries truth, long issuedAtEpochS, long untilEpochS) {
        double errorK = biasK + spreadK * new Random(mixed(seed ^ issuedAtEpochS)).nextGaussian();
        return new NightForecast(
                issuedAtEpochS, untilEpochS, truth.lowestOutsideAirC(issuedAtEpochS, untilEpochS) + errorK);
    }

    /** Spreads neighbouring times over the whole range of seeds (finaliser of SplitMix64, Steele, Lea &amp; Flood 2014). */
    private static long mixed(long z) {
        long first = (z ^ (z >>> 30)) * 0xbf58476d1ce4e5b9L;
        long second = (first ^ (first >>> 27)) * 0x94d049bb133111ebL;
        return second ^ (second >>> 31);
    }
}
