package rimeward.sim.weather;

/** Weather from a file, and what became of everything that stood in it. */
public record Imported(WeatherSeries series, ImportReport report) {}
