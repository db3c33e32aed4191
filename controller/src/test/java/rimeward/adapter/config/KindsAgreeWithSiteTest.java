package rimeward.adapter.config;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The limits that settings tell people are stated beside the keys, those that guard the values in {@link rimeward.site}. A value that
 * the keys let pass and the site refuses would be told without its line: this test finds such a pair.
 */
class KindsAgreeWithSiteTest {

    private static final Pattern LIMITS = Pattern.compile("must lie between (\\S+) and (\\S+);");

    @ParameterizedTest
    @ValueSource(
            strings = {
                "minimum_C",
                "guard_margin_K",
                "differential_K",
                "rh_differential_percent",
                "bench_dew_spread_K",
                "film_dew_spread_K",
                "floor_area_m2",
                "volume_m3",
                "altitude_m",
                "heat_loss_W_per_K",
                "air_capacity_J_per_K",
                "mass_capacity_J_per_K",
                "mass_coupling_W_per_K",
                "film_fraction",
                "uncertainty_K",
                "uncertainty_percent",
                "dead_time_s",
                "run_on_s",
                "minimum_air_C",
                "collection_L_per_h",
                "tank_L",
                "voltage_V",
                "fuse_A",
                "continuous_factor",
                "stagger_s",
                "per_kWh",
                "rh_percent",
                "hot_C",
                "rated_W",
                "max_starts_per_h",
                "other_load_W"
            })
    void siteAcceptsWhatTheKeysLetPass(String key) {
        String refusal = messageWith(key, "-1000000");
        Matcher limits = LIMITS.matcher(refusal);
        assertThat(limits.find()).as(refusal).isTrue();
        assertThat(messageWith(key, limits.group(1))).doesNotContain("is refused");
        assertThat(messageWith(key, limits.group(2))).doesNotContain("is refused");
    }

    private static String messageWith(String key, String value) {
        String text = SmallSite.TEXT.replaceFirst("(?m)^" + key + " = .*$", key + " = " + value);
        assertThat(text).contains("\n" + key + " = " + value + "\n");
        try {
            SiteSettings.read(TomlTree.parse("tunnel.toml", text));
            return "";
        } catch (BadSettings e) {
            return e.toString();
        }
    }
}
