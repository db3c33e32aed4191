package rimeward.app;

import java.util.Locale;
import rimeward.site.Forecasting;
import rimeward.site.Site;

/** Where forecasts come from, as {@code check} tells it, and what leaves the house for them. */
final class ForecastSheet {
    private ForecastSheet() {}

    static String of(Site site) {
        return "\nForecast\n" + told(site.forecasting());
    }

    private static String told(Forecasting forecasting) {
        if (forecasting instanceof Forecasting.FromFile from) {
            return "  from the file " + from.file() + ", looked at each minute\n";
        }
        return forecasting instanceof Forecasting.FromService from
                ? service(from)
                : "  none: nights are told from this tunnel's own air\n";
    }

    private static String service(Forecasting.FromService from) {
        return String.format(
                Locale.ROOT,
                """
                from %s, for the air near %s, %s (rounded: no more is told of the place, but its altitude)
                says that %s is asking
                """.indent(2),
                from.host(),
                side(from.coarseLatitudeDeg(), "north", "south"),
                side(from.coarseLongitudeDeg(), "east", "west"),
                from.contact());
    }

    private static String side(double deg, String above, String below) {
        return String.format(Locale.ROOT, "%.2f° %s", StrictMath.abs(deg), deg < 0 ? below : above);
    }
}
