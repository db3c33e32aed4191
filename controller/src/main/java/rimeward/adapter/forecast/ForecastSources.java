package rimeward.adapter.forecast;

import java.nio.file.Path;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import rimeward.core.reading.WallTime;
import rimeward.site.Forecasting;
import rimeward.site.Site;

/** Makes the source of forecasts that a site's settings name. */
public final class ForecastSources {
    private ForecastSources() {}

    /**
     * Begins to look for forecasts, where the settings name a source of them; else there never are any.
     *
     * @param wall the time of day; from any thread
     * @param nanoTime monotonic time, ns: {@code System.nanoTime}
     */
    public static RunningForecasts of(Site site, Supplier<WallTime> wall, LongSupplier nanoTime) {
        if (site.forecasting() instanceof Forecasting.FromFile from) {
            return new RunningForecasts(new FileForecasts(Path.of(from.file()), wall), () -> {}, nanoTime).start();
        }
        if (site.forecasting() instanceof Forecasting.FromService from) {
            Wire wire = new HttpWire(
                    HttpWire.question(from, site.tunnel().altitudeM()), userAgent(from), HttpWire.Limits.USUAL);
            Waits waits = new Waits("forecasts of " + site.id());
            return new RunningForecasts(new ServiceForecasts(from.source(), wire, waits, wall), wire::close, nanoTime)
                    .start();
        }
        return new RunningForecasts(new NoSource(), () -> {}, nanoTime);
    }

    /** Who asks, as the service's terms want it: the program, its version and whom to write to. */
    static String userAgent(Forecasting.FromService from) {
        String version = ForecastSources.class.getPackage().getImplementationVersion();
        return "Rimeward/" + (version == null ? "unknown" : version) + " " + from.contact();
    }
}
