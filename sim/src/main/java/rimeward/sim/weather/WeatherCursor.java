package rimeward.sim.weather;

/**
 * One thread's place in a {@link WeatherSeries}: move it to a second, then read. It allocates nothing, and a move within the
 * same pair of samples costs a subtraction, two comparisons and a multiplication, so that it may be moved at every step of
 * the simulation.
 */
public final class WeatherCursor {
    private final WeatherSeries series;
    private final int stepS;
    private final double perStep;
    private long fromEpochS;
    private int from;
    private double part;

    WeatherCursor(WeatherSeries series) {
        this.series = series;
        this.stepS = series.stepS();
        this.perStep = 1.0 / stepS;
        this.fromEpochS = series.startEpochS();
    }

    /**
     * Moves to a second, forwards or backwards.
     *
     * @throws IllegalArgumentException if the series does not reach there: weather is never made up beyond its ends
     */
    public void moveTo(long epochS) {
        long sinceS = epochS - fromEpochS;
        if (sinceS < 0 || sinceS > stepS) {
            leap(epochS);
            sinceS = epochS - fromEpochS;
        }
        part = sinceS * perStep;
    }

    private void leap(long epochS) {
        if (epochS < series.startEpochS() || epochS > series.endEpochS()) {
            throw new IllegalArgumentException("weather runs from epoch second " + series.startEpochS() + " to "
                    + series.endEpochS() + ", asked for " + epochS);
        }
        long steps = (epochS - series.startEpochS()) / stepS;
        from = (int) Math.min(steps, series.samples() - 2);
        fromEpochS = series.startEpochS() + (long) from * stepS;
    }

    private double at(double[] values) {
        double before = values[from];
        return before + part * (values[from + 1] - before);
    }

    public double outsideAirC() {
        return at(series.outsideAirC);
    }

    public double vapourPa() {
        return at(series.vapourPa);
    }

    /** Kilograms of vapour per kilogram of dry air. */
    public double humidityKgPerKg() {
        return at(series.humidityKgPerKg);
    }

    public double windMPerS() {
        return at(series.windMPerS);
    }

    public double pressurePa() {
        return at(series.pressurePa);
    }

    public double cloudFraction() {
        return at(series.cloudFraction);
    }

    public double globalRadiationWPerM2() {
        return at(series.globalRadiationWPerM2);
    }

    /** Temperature in °C of a black sky that would send down the same long-wave radiation. */
    public double skyC() {
        return at(series.skyC);
    }
}
