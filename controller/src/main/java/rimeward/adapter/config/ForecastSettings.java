package rimeward.adapter.config;

import java.util.List;
import java.util.Optional;
import rimeward.site.Forecasting;
import rimeward.site.Forecasting.FromService;

/** Reads {@code [forecast]}; without it there is none. */
final class ForecastSettings {
    private enum By {
        SERVICE,
        FILE
    }

    private static final List<String> OF_SERVICE = List.of("url", "latitude_deg", "longitude_deg", "contact");

    private ForecastSettings() {}

    static Forecasting read(TableReader top) {
        return top.findTable("forecast").flatMap(ForecastSettings::forecast).orElse(new Forecasting.None());
    }

    private static Optional<Forecasting> forecast(TableReader table) {
        By by = table.get("by", Kinds.word(By.class));
        if (!table.isSound()) {
            OF_SERVICE.forEach(table::has); // known, whichever was meant
            table.has("file");
            return Optional.empty();
        }
        return by == By.FILE ? file(table) : service(table);
    }

    private static Optional<Forecasting> file(TableReader table) {
        String file = table.get("file", Kinds.text());
        OF_SERVICE.forEach(key -> useless(table, key, "file"));
        return table.whenSound(() -> new Forecasting.FromFile(file));
    }

    private static Optional<Forecasting> service(TableReader table) {
        String url = table.get("url", url(), FromService.PUBLISHED_URL);
        double latitudeDeg = table.get("latitude_deg", Kinds.number(-90, 90));
        double longitudeDeg = table.get("longitude_deg", Kinds.number(-180, 180));
        String contact = table.get("contact", contact());
        useless(table, "file", "service");
        return table.whenSound(() -> new FromService(url, latitudeDeg, longitudeDeg, contact));
    }

    private static void useless(TableReader table, String key, String by) {
        if (table.has(key)) {
            table.fault(key, "has no use with by = \"" + by + "\"", "remove it");
        }
    }

    private static Kind<String> url() {
        return Kinds.checked(
                "the service's address without a question, in quotes",
                FromService.PUBLISHED_URL,
                FromService::isSafe,
                "must begin with https:// and a host, and end with its path (http:// to this machine only)",
                "remove the key for MET Norway's");
    }

    private static Kind<String> contact() {
        return Kinds.checked(
                "an e-mail or web address in quotes; the service shuts out who does not say who is asking",
                "a@b",
                FromService::isContact,
                "is no e-mail or web address",
                "name one under which the service can reach you");
    }
}
