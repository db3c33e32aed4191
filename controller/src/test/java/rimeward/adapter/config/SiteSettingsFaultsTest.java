package rimeward.adapter.config;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

/** Every kind of fault, in the words that a person reads. */
class SiteSettingsFaultsTest {

    private static final String STAGE =
            "[[heater.stage]]\nid = \"%s\"\nrated_W = %s\nmin_on_s = 60\nmin_rest_s = 60\nmax_starts_per_h = 12\npower_feedback = true\n";

    @Test
    void misspeltKeyIsToldOnce() {
        refused(
                SmallSite.with("hot_C = 25", "hott_C = 25"),
                "tunnel.toml:10: targets.hott_C = 25 is not a known key; did you mean hot_C?");
    }

    @Test
    void unitInTheWrongCase() {
        refused(
                SmallSite.with("fuse_A = 13", "fuse_a = 13"),
                "tunnel.toml:55: circuit.fuse_a = 13 is not a known key; did you mean fuse_A?");
    }

    @Test
    void misspeltTable() {
        refused(
                SmallSite.with("[targets]", "[target]"),
                "tunnel.toml:7: target is not a known table; did you mean targets?");
    }

    @Test
    void unknownKeyLikeNoOther() {
        refused(
                SmallSite.with("fuse_A = 13", "fuse_A = 13\ncolour = \"red\""),
                "tunnel.toml:56: circuit.colour = \"red\" is not a known key; remove it; known here: voltage_V, fuse_A,"
                        + " continuous_factor, other_load_W, stagger_s");
    }

    @Test
    void missingKeyAndTable() {
        refused(
                SmallSite.with("hot_C = 25", ""),
                "tunnel.toml:7: targets.hot_C is missing; add it: a number between 10 and 45");
        refused(
                SmallSite.with("[tariff]\ncurrency = \"GBP\"\nper_kWh = 0.29", ""),
                "tunnel.toml:1: tariff is missing; add it: a table, [tariff]");
        refused(
                SmallSite.with("[[plant]]\nname = \"potted citrus\"\nminimum_C = 4", ""),
                "tunnel.toml:1: plant is missing; add it: one or more [[plant]]; the floor is the highest of the plants' minimums");
    }

    @Test
    void wrongType() {
        refused(
                SmallSite.with("hot_C = 25", "hot_C = \"warm\""),
                "tunnel.toml:10: targets.hot_C = \"warm\" must be a number between 10 and 45; write it without quotes");
        refused(
                SmallSite.with("humidity = true", "humidity = 1"),
                "tunnel.toml:27: sensor[1].humidity = 1 must be true or false; write the bare word, without quotes");
        refused(
                SmallSite.with("max_starts_per_h = 12", "max_starts_per_h = 12.5"),
                "tunnel.toml:37: heater.stage[1].max_starts_per_h = 12.5 must be a whole number between 1 and 60; round it");
        refused(
                SmallSite.with("name = \"Hallin Rigg\"", "name = 7"),
                "tunnel.toml:3: site.name = 7 must be text in quotes; put it in double quotes");
        refused(
                SmallSite.with("[circuit]", "[[circuit]]"),
                "tunnel.toml:53: circuit must be a table; write [circuit] and its keys below");
    }

    @Test
    void impossibleFloor() {
        refused(
                SmallSite.with("minimum_C = 4", "minimum_C = 40"),
                "tunnel.toml:6: plant[1].minimum_C = 40 must lie between -10 and 20; lower it to at most 20");
        refused(
                SmallSite.with("minimum_C = 4", "minimum_F = 4"),
                "tunnel.toml:6: plant[1].minimum_F = 4 must lie between 14 and 68; raise it to at least 14");
        refused(
                SmallSite.with("minimum_C = 4", "minimum_C = 4\nminimum_F = 39"),
                "tunnel.toml:7: plant[1].minimum_F = 39 says the same as minimum_C; keep one of the two");
    }

    @Test
    void nanAndInfinity() {
        refused(
                SmallSite.with("hot_C = 25", "hot_C = nan"),
                "tunnel.toml:10: targets.hot_C = nan must be a number between 10 and 45; give a real number");
        refused(
                SmallSite.with("hot_C = 25", "hot_C = -inf"),
                "tunnel.toml:10: targets.hot_C = -inf must be a number between 10 and 45; give a real number");
    }

    @Test
    void misspeltWord() {
        refused(
                SmallSite.with("kind = \"sorption\"", "kind = \"sorbtion\""),
                "tunnel.toml:41: dryer.kind = \"sorbtion\" must be one of \"sorption\", \"compressor\"; did you mean \"sorption\"?");
    }

    @Test
    void floorBandAboveTheHotLimit() {
        refused(
                SmallSite.with("hot_C = 25", "hot_C = 10").replace("minimum_C = 4", "minimum_C = 8"),
                "tunnel.toml:10: targets.hot_C = 10 leaves no room above the floor band: floor 8 °C (potted citrus) +"
                        + " guard_margin_K + differential_K ends at 9.5 °C; raise it to at least 10.5 °C, or lower the band");
    }

    @Test
    void machineThatTheCircuitCannotCarryAlone() {
        refused(
                SmallSite.with("rated_W = 900", "rated_W = 2350"),
                "tunnel.toml:34: heater.stage[1].rated_W = 2350 is alone with the dryer's fan (50 W) more than the circuit carries"
                        + " for hours on end: 230 V × 13 A × 0.8 − 0 W = 2392 W; fit a smaller machine, or have a stronger"
                        + " circuit put in");
    }

    @Test
    void circuitThatSomethingElseUsesUp() {
        refused(
                SmallSite.with("other_load_W = 0", "other_load_W = 3000"),
                "tunnel.toml:57: circuit.other_load_W = 3000 leaves nothing of the 2392 W that the circuit carries for hours on"
                        + " end; move that load, or have a stronger circuit put in");
    }

    @Test
    void relayWithoutStartAndStopLevel() {
        refused(
                SmallSite.with(
                        "power_feedback = true",
                        "power_feedback = true\n[heater.stage.relay]\nchip = \"pinctrl-rp1\"\nline = 17\nactive_low = false"),
                """
                tunnel.toml:39: heater.stage[1].relay.closed_at_start is missing; add it: true or false, whether the relay is closed when the service takes the line
                tunnel.toml:39: heater.stage[1].relay.closed_at_stop is missing; add it: true or false, whether the relay is closed when the service lets go""");
    }

    @Test
    void twoRelaysOnOneLineAndTwoMachinesOfOneName() {
        String relay =
                "[heater.stage.relay]\nchip = \"c\"\nline = 17\nactive_low = false\nclosed_at_start = false\nclosed_at_stop = true\n";
        String twins = STAGE.formatted("twin", 300) + relay + STAGE.formatted("twin", 300) + relay;
        refused(SmallSite.with("[dryer]", twins + "[dryer]"), """
                tunnel.toml:53: heater.stage[3].id = "twin" is the name of another machine too; give each its own
                tunnel.toml:59: heater.stage[3].relay sits on a line that something else uses too; give each its own line""");
    }

    @Test
    void startsThatDoNotFitTheHour() {
        refused(
                SmallSite.with("max_starts_per_h = 12", "max_starts_per_h = 40"),
                "tunnel.toml:37: heater.stage[1].max_starts_per_h = 40 leaves 90 s from start to start, less than min_on_s +"
                        + " min_rest_s = 120 s; lower it to at most 30");
    }

    @Test
    void noSensorInside() {
        refused(
                SmallSite.with("bench = \"north bench\"", "outside = true"),
                "tunnel.toml:24: sensor has none inside; hang one among the plants and give it bench = \"…\"");
    }

    @Test
    void contradictions() {
        refused(
                SmallSite.with("tank_L = 5.5", "tank_L = 5.5\nhose = true"),
                "tunnel.toml:47: dryer.tank_L = 5.5 contradicts hose = true; keep one of the two");
        refused(
                SmallSite.with("fan_W = 50", "fan_W = 600"),
                "tunnel.toml:43: dryer.fan_W = 600 is more than the whole dryer's rated_W; give the fan's share alone");
        refused(
                SmallSite.with("rh_percent = 82", "rh_percent = 95")
                        .replace("rh_differential_percent = 8", "rh_differential_percent = 10"),
                "tunnel.toml:11: targets.rh_percent = 95 makes the dryer come on at 100 % only, rh_percent + half of"
                        + " rh_differential_percent; keep that at 99 or below");
    }

    @Test
    void dayHasTwentyFourHours() {
        refused(
                SmallSite.with("per_kWh = 0.29", "hourly_per_kWh = [0.1, 0.2]"),
                "tunnel.toml:61: tariff.hourly_per_kWh has 2 prices and must have 24; give one for each hour, the first from"
                        + " midnight");
        refused(
                SmallSite.with("per_kWh = 0.29", "hourly_per_kWh = [\n  0.1,\n  \"0.2\"]"),
                "tunnel.toml:63: tariff.hourly_per_kWh[2] = \"0.2\" must be a number between -1000 and 1000; write it without"
                        + " quotes");
    }

    @Test
    void severalFaultsAreToldAtOnceInTheOrderOfTheFile() {
        refused(
                SmallSite.with("hot_C = 25", "hot_C = 5")
                        .replace("fuse_A = 13", "fuse_A = true")
                        .replace("dead_time_s", "deadtime_s"),
                """
                tunnel.toml:10: targets.hot_C = 5 must lie between 10 and 45; raise it to at least 10
                tunnel.toml:31: heater.deadtime_s = 120 is not a known key; did you mean dead_time_s?
                tunnel.toml:55: circuit.fuse_A = true must be a number between 1 and 125; give a number""");
    }

    private static void refused(String text, String message) {
        TomlTree tree = TomlTree.parse("tunnel.toml", text);
        assertThatThrownBy(() -> SiteSettings.read(tree))
                .isInstanceOf(BadSettings.class)
                .hasMessage(message);
    }
}
