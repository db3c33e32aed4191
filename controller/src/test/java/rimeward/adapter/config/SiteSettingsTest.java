package rimeward.adapter.config;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import rimeward.fixture.Example;
import rimeward.site.Drying;
import rimeward.site.Place;
import rimeward.site.SensorLimits;
import rimeward.site.Site;
import rimeward.site.Tariff;
import rimeward.site.Venting;
import rimeward.site.Wiring;

class SiteSettingsTest {

    @Test
    void theDocumentedExampleIsSound() {
        Site site = SiteSettings.read(Path.of("..", "config", "tunnel.toml"));
        assertThat(site.floorC()).isEqualTo(4);
        assertThat(site.tunnel().floorAreaM2()).isEqualTo(24);
        assertThat(site.drying()).isInstanceOf(Drying.Dryer.class);
        assertThat(site.tariff().pricePerKWh(3 * 60)).isEqualTo(0.13);
        assertThat(site.ratedW(site.heaterStages().or(site.dryerRelay()).or(site.ventRelay())))
                .isLessThanOrEqualTo(site.circuit().limitW());
    }

    @Test
    void theRelayInTheExamplesCommentIsSoundToo() throws IOException {
        assertThat(read(Example.live()).heater().stages().get(0).wiring())
                .isEqualTo(new Wiring.GpioLine("pinctrl-rp1", 17, true, true, true));
    }

    @Test
    void whatMayBeLeftOutHasItsDefault() {
        Site site = read(SmallSite.TEXT);
        assertThat(site.venting()).isEqualTo(new Venting.NoVentFan());
        assertThat(site.sensors().get(0).limits()).isEqualTo(SensorLimits.defaults());
        assertThat(site.sensors().get(0).place()).isEqualTo(new Place.Bench("north bench"));
        assertThat(site.heater().stages().get(0).wiring()).isEqualTo(new Wiring.NotWired());
        assertThat(site.tariff()).isEqualTo(new Tariff.Flat("GBP", 0.29));
    }

    @Test
    void fahrenheitIsTakenWhereTheKeySaysSo() {
        assertThat(read(SmallSite.with("minimum_C = 4", "minimum_F = 39.2")).floorC())
                .isEqualTo(4.0);
        assertThat(read(SmallSite.with("hot_C = 25", "hot_F = 80")).targets().hotC())
                .isCloseTo(26.666667, within(1e-6));
    }

    @Test
    void aHoseNeedsNoTank() {
        Drying drying = read(SmallSite.with("tank_L = 5.5", "hose = true")).drying();
        assertThat(((Drying.Dryer) drying).tankL()).isInfinite();
    }

    @Test
    void tariffsComeInThreeShapes() {
        Tariff night = read(SmallSite.with(
                        "per_kWh = 0.29",
                        "day_per_kWh = 0.3\nnight_per_kWh = 0.1\nnight_from = \"23:30\"\nnight_to = 07:00:00"))
                .tariff();
        assertThat(night).isEqualTo(new Tariff.DayNight("GBP", 0.3, 0.1, 23 * 60 + 30, 7 * 60));
        String prices = "0.1, ".repeat(23) + "-1";
        Tariff hourly = read(SmallSite.with("per_kWh = 0.29", "hourly_per_kWh = [" + prices + "]"))
                .tariff();
        assertThat(hourly.pricePerKWh(23 * 60)).isEqualTo(-1);
    }

    @Test
    void aScenarioCanChangeTheTunnelAndIsBlamedForWhatItBreaks() {
        TomlTree tunnel = TomlTree.parse("tunnel.toml", SmallSite.TEXT);
        TomlTree scenario = TomlTree.parse("small-heater.toml", """
                start = "2014-01-03"
                [settings]
                dryer = "none"
                targets.hot_C = 3
                [[settings.heater.stage]]
                id = "only"
                rated_W = 400
                min_on_s = 0
                min_rest_s = 0
                max_starts_per_h = 20
                power_feedback = "yes"
                """);
        Faults faults = new Faults();
        TableReader top = faults.reader(scenario);
        assertThat(top.get("start", Kinds.text())).isEqualTo("2014-01-03");
        TomlTree merged = tunnel.with(top.subtree("settings").orElseThrow());
        assertThat(SiteSettings.read(merged, faults)).isEmpty();
        assertThatThrownBy(faults::throwIfAny).hasMessage("""
                        small-heater.toml:4: targets.hot_C = 3 must lie between 10 and 45; raise it to at least 10
                        small-heater.toml:11: heater.stage[1].power_feedback = "yes" must be true or false; write the bare word, without quotes""");
    }

    @Test
    void aScenarioCanTakeTheDryerAway() {
        TomlTree noDryer = TomlTree.parse("dry.toml", "dryer = \"none\"\ntargets.rh_percent = 90");
        Site site =
                SiteSettings.read(TomlTree.parse("tunnel.toml", SmallSite.TEXT).with(noDryer));
        assertThat(site.drying()).isEqualTo(new Drying.NoDryer());
        assertThat(site.targets().rhPercent()).isEqualTo(90);
        assertThat(site.targets().hotC()).isEqualTo(25);
    }

    private static Site read(String text) {
        return SiteSettings.read(TomlTree.parse("tunnel.toml", text));
    }
}
