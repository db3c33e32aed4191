package rimeward.adapter.config;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import rimeward.fixture.Example;
import rimeward.site.Contact;
import rimeward.site.Drying;
import rimeward.site.InputLine;
import rimeward.site.Meter;
import rimeward.site.Site;

/** Float, door and meters: what the settings say of how they come in. */
class InputTablesTest {
    private static final String LINE = "chip = \"c\"\nline = 23\nactive_low = true\npull = \"up\"\n";
    private static final InputLine AT = new InputLine("c", 23, true, InputLine.Pull.UP);

    @Test
    void floatAndDoor() {
        Site site = read(SmallSite.with(
                "[circuit]", "[dryer.float]\n" + LINE + "[door]\n" + LINE.replace("23", "24") + "[circuit]"));
        assertThat(((Drying.Dryer) site.drying()).tankFloat()).isEqualTo(new Contact.OnLine(AT));
        assertThat(site.door()).isEqualTo(new Contact.OnLine(new InputLine("c", 24, true, InputLine.Pull.UP)));
    }

    @Test
    void withoutTablesTheFloatIsFittedButNotAttachedAndThereIsNoDoorSwitch() {
        Site site = read(SmallSite.TEXT);
        assertThat(((Drying.Dryer) site.drying()).tankFloat()).isEqualTo(new Contact.NotAttached());
        assertThat(site.door()).isEqualTo(new Contact.NotFitted());
        assertThat(site.machines().get(0).meter()).isEqualTo(new Meter.NotAttached());
        assertThat(site.machines().get(1).meter()).isEqualTo(new Meter.NotFitted());
    }

    @Test
    void eachMeterIsRead() {
        assertThat(meter("by = \"pulses\"\npulses_per_kWh = 1000\n" + LINE)).isEqualTo(new Meter.Pulses(AT, 1000));
        assertThat(meter("by = \"counter\"\npulses_per_kWh = 800\ndevice = \"counter-0\"\ncount = 0"))
                .isEqualTo(new Meter.Counter("counter-0", 0, 800));
        assertThat(meter("by = \"contact\"\n" + LINE)).isEqualTo(new Meter.Running(AT));
        assertThat(meter("by = \"hwmon\"\ndevice = \"ina226\"\nchannel = 1"))
                .isEqualTo(new Meter.PowerFile(Meter.Driver.HWMON, "ina226", 1));
        assertThat(meter("by = \"iio\"\ndevice = \"ina226\"\nchannel = 2"))
                .isEqualTo(new Meter.PowerFile(Meter.Driver.IIO, "ina226", 2));
    }

    @Test
    void theExamplesCommentsAreSound() throws IOException {
        Site site = read(Example.live());
        assertThat(site.machines().get(0).meter())
                .isEqualTo(new Meter.Pulses(new InputLine("pinctrl-rp1", 23, true, InputLine.Pull.UP), 1000));
        assertThat(((Drying.Dryer) site.drying()).tankFloat()).isInstanceOf(Contact.OnLine.class);
        assertThat(site.door()).isInstanceOf(Contact.OnLine.class);
    }

    @Test
    void faultsAreToldAtOnce() {
        assertThatThrownBy(
                        () -> meter("by = \"pulse\"\npulses_per_kWh = 1000\nchip = \"c\"\nline = 600\npull = \"off\""))
                .hasMessageContaining("meter.by = \"pulse\" must be one of")
                .hasMessageContaining("did you mean \"pulses\"?")
                .hasMessageContaining("meter.line = 600 must lie between 0 and 511")
                .hasMessageContaining(
                        "meter.active_low is missing; add it: true or false, whether the line is low while a pulse lasts")
                .hasMessageContaining("meter.pull = \"off\" must be one of \"up\", \"down\", \"none\"");
    }

    @Test
    void aMeterTooCoarseToNoticeAFailureInTimeIsRefused() {
        assertThatThrownBy(() -> meter("by = \"pulses\"\npulses_per_kWh = 100\n" + LINE))
                .hasMessage(
                        "tunnel.toml:41: heater.stage[1].meter.pulses_per_kWh = 100 gives a pulse in 40 s at rated_W = 900,"
                                + " and one is needed every 5 s to notice a machine that gives nothing; fit a meter with at least 800"
                                + " pulses, or use by = \"contact\"");
        assertThat(meter("by = \"pulses\"\npulses_per_kWh = 800\n" + LINE)).isEqualTo(new Meter.Pulses(AT, 800));
    }

    @Test
    void whatIsDeniedCannotBeAttached() {
        assertThatThrownBy(() -> read(SmallSite.with(
                                "power_feedback = false",
                                "power_feedback = false\n[dryer.meter]\nby = \"contact\"\n" + LINE)
                        .replace("tank_float = true", "tank_float = false")
                        .replace("[circuit]", "[dryer.float]\n" + LINE + "[circuit]")))
                .hasMessageContaining("dryer.power_feedback = false contradicts the table meter")
                .hasMessageContaining("dryer.tank_float = false contradicts the table float");
    }

    @Test
    void oneLineDoesNotServeTwo() {
        String relay = """
                [heater.stage.relay]
                chip = "c"
                line = 23
                active_low = false
                closed_at_start = false
                closed_at_stop = true
                """;
        String meter = "[heater.stage.meter]\nby = \"contact\"\n" + LINE;
        assertThatThrownBy(() -> read(SmallSite.with("[dryer]", relay + meter + "[door]\n" + LINE + "[dryer]")))
                .hasMessageContaining(
                        "heater.stage[1].meter sits on a line that something else uses too; give each its own line")
                .hasMessageContaining("door sits on a line");
    }

    @Test
    void oneMeterDoesNotServeTwo() {
        String meter = "by = \"hwmon\"\ndevice = \"ina226\"\nchannel = 1\n";
        String text = SmallSite.with("power_feedback = false", "power_feedback = true\n[dryer.meter]\n" + meter)
                .replace("[dryer]", "[heater.stage.meter]\n" + meter + "[dryer]");
        assertThatThrownBy(() -> read(text))
                .hasMessageContaining("dryer.meter reads what another machine's meter reads too");
    }

    @Test
    void oneAddressDoesNotServeTwo() {
        String one = """
                [[sensor]]
                id = "%s"
                bench = "b"
                humidity = false
                uncertainty_K = 1
                [sensor.attached]
                by = "%s"
                bus = 1
                address = 0x44
                """;
        String text =
                SmallSite.with("[heater]", one.formatted("a", "hwmon") + one.formatted("b", "i2c-sht3x") + "[heater]");
        assertThatThrownBy(() -> read(text)).hasMessageContaining("attached is where another sensor sits too");
    }

    private static Meter meter(String table) {
        return read(SmallSite.with("[dryer]", "[heater.stage.meter]\n" + table + "\n[dryer]"))
                .machines()
                .get(0)
                .meter();
    }

    private static Site read(String text) {
        return SiteSettings.read(TomlTree.parse("tunnel.toml", text));
    }
}
