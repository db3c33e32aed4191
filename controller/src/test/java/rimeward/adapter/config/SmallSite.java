package rimeward.adapter.config;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The shortest sound settings, and changes to them. Line numbers in the tests' messages count from its first line. */
final class SmallSite {
    static final String TEXT = """
            [site]
            id = "hallin-rigg"
            name = "Hallin Rigg"
            [[plant]]
            name = "potted citrus"
            minimum_C = 4
            [targets]
            guard_margin_K = 0.5
            differential_K = 1.0
            hot_C = 25
            rh_percent = 82
            rh_differential_percent = 8
            bench_dew_spread_K = 1
            film_dew_spread_K = -6
            [tunnel]
            floor_area_m2 = 24
            volume_m3 = 50
            altitude_m = 260
            heat_loss_W_per_K = 150
            air_capacity_J_per_K = 200_000
            mass_capacity_J_per_K = 5_000_000
            mass_coupling_W_per_K = 250
            film_fraction = 0.4
            [[sensor]]
            id = "north-bench"
            bench = "north bench"
            humidity = true
            uncertainty_K = 0.3
            uncertainty_percent = 3
            [heater]
            dead_time_s = 120
            [[heater.stage]]
            id = "heater-1"
            rated_W = 900
            min_on_s = 60
            min_rest_s = 60
            max_starts_per_h = 12
            power_feedback = true
            [dryer]
            id = "dryer"
            kind = "sorption"
            rated_W = 550
            fan_W = 50
            run_on_s = 180
            minimum_air_C = 1
            collection_L_per_h = 0.4
            tank_L = 5.5
            tank_float = true
            min_on_s = 300
            min_rest_s = 180
            max_starts_per_h = 6
            power_feedback = false
            [circuit]
            voltage_V = 230
            fuse_A = 13
            continuous_factor = 0.8
            other_load_W = 0
            stagger_s = 10
            [tariff]
            currency = "GBP"
            per_kWh = 0.29
            """;

    private SmallSite() {}

    /** The text with one line (or start of a line) put in another's place; it must occur. */
    static String with(String line, String instead) {
        if (!TEXT.contains("\n" + line)) {
            throw new IllegalArgumentException("no line begins with: " + line);
        }
        return TEXT.replaceFirst("(?m)^" + Pattern.quote(line), Matcher.quoteReplacement(instead));
    }
}
