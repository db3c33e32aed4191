package rimeward.core.outlook;

import java.util.Arrays;
import java.util.Locale;
import rimeward.core.tunnel.Figure;
import rimeward.site.Site;

/**
 * What another way of keeping the tunnel takes in the same night, by the same model.
 *
 * @param way which
 * @param lowestBenchC how cold it lets the coldest bench get, °C
 * @param savedKWh what ours takes less, kWh; negative where it takes more
 * @param savedCost the same in money
 */
public record Alternative(Way way, Figure kWh, Figure cost, Figure lowestBenchC, Figure savedKWh, Figure savedCost) {
    /** The ways that are compared, by the names that the simulator gives them. */
    public enum Way {
        THERMOSTAT("thermostat", "the heater alone on a plain thermostat", "the heater alone"),
        DRYER_ALONE("dryer-alone", "the dryer alone on its own humidistat", "the dryer alone"),
        BY_HAND("by-hand", "the heater on its own dial all night", "the heater on its dial");

        private final String id;
        private final String words;
        private final String brief;

        Way(String id, String words, String brief) {
            this.id = id;
            this.words = words;
            this.brief = brief;
        }

        public String id() {
            return id;
        }

        /** @throws IllegalArgumentException if none is called so */
        static Way named(String id) {
            return Arrays.stream(values())
                    .filter(way -> way.id.equals(id))
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException("no way of keeping a tunnel is called " + id));
        }
    }

    /** Nearer than this is told as "at the floor", K. */
    private static final double AT_FLOOR_K = 0.05;

    private static final double SAME_KWH = 0.05;

    /** "3.1 kWh less than the heater alone". */
    public String saved() {
        double kWh = savedKWh.value();
        return StrictMath.abs(kWh) < SAME_KWH
                ? "about as much as " + way.brief
                : String.format(
                        Locale.ROOT, "%.1f kWh %s than %s", StrictMath.abs(kWh), kWh < 0 ? "more" : "less", way.brief);
    }

    /** What it takes, seen from what ours truly took. */
    Alternative beside(double oursKWh, double oursCost) {
        return new Alternative(
                way, more(savedKWh, oursKWh), more(savedCost, oursCost), lowestBenchC, savedKWh, savedCost);
    }

    private static Figure more(Figure saved, double ours) {
        return new Figure(ours + saved.value(), saved.standardError());
    }

    /** "The dryer alone would have let the coldest bench down to −3.2 °C.": of a night that was. */
    String letDown(Site site) {
        return capital(way.brief) + " would have let the coldest bench down to "
                + site.degrees().text(lowestBenchC.value()) + ".";
    }

    /** What it costs, in one sentence. */
    public String costSentence(Site site, boolean past) {
        return String.format(
                Locale.ROOT,
                "%s %s %.1f kWh, give or take %.1f, for %.2f %s: %s.",
                capital(way.words),
                past ? "would have taken" : "would take",
                kWh.value(),
                kWh.standardError(),
                cost.value(),
                site.tariff().currency(),
                ours(site.tariff().currency(), past));
    }

    private String ours(String currency, boolean past) {
        String verb = past ? "ours took" : "ours takes";
        if (StrictMath.abs(savedKWh.value()) < SAME_KWH) {
            return verb + " about the same";
        }
        return String.format(
                Locale.ROOT,
                "%s %.1f kWh, give or take %.1f, and %.2f %s %s",
                verb,
                StrictMath.abs(savedKWh.value()),
                savedKWh.standardError(),
                StrictMath.abs(savedCost.value()),
                currency,
                moreOrLess());
    }

    private String moreOrLess() {
        boolean kWhLess = savedKWh.value() >= 0;
        boolean costLess = savedCost.value() >= 0;
        if (kWhLess == costLess) {
            return kWhLess ? "less" : "more";
        }
        return kWhLess ? "less electricity, though more money" : "more electricity, though less money";
    }

    /** How cold it gets, in one sentence. */
    public String coldSentence(Site site, boolean past) {
        double belowK = site.floorC() - lowestBenchC.value();
        String where = StrictMath.abs(belowK) < AT_FLOOR_K
                ? "just at the floor"
                : site.degrees().span(StrictMath.abs(belowK)) + (belowK > 0 ? " below" : " above") + " the floor";
        return "The coldest bench " + (past ? "would have been" : "would get") + " down to "
                + site.degrees().text(lowestBenchC.value()) + ", give or take "
                + site.degrees().span(lowestBenchC.standardError()) + ", " + where + ".";
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
