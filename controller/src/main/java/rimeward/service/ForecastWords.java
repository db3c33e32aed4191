package rimeward.service;

import java.util.Locale;
import rimeward.core.order.HandedForecast;

/** What the grower reads after handing a forecast over. */
final class ForecastWords {
    private ForecastWords() {}

    static String taken(HandedForecast.Night handed) {
        return String.format(
                Locale.ROOT,
                "The forecast of %.1f °C at the lowest, give or take %.1f K, is used from now on, for %.1f h at most.",
                handed.night().lowestOutsideC(),
                handed.night().spreadK(),
                handed.lastsS() / 3600);
    }
}
