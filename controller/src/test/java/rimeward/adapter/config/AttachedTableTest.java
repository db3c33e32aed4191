package rimeward.adapter.config;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import rimeward.fixture.Example;
import rimeward.site.Attached;

class AttachedTableTest {

    @Test
    void eachWayIsRead() {
        assertThat(attached("by = \"i2c-sht4x\"\nbus = 1\naddress = 0x44"))
                .isEqualTo(new Attached.I2c(Attached.Chip.SHT4X, 1, 0x44));
        assertThat(attached("by = \"i2c-sht3x\"\nbus = 3\naddress = 0x45"))
                .isEqualTo(new Attached.I2c(Attached.Chip.SHT3X, 3, 0x45));
        assertThat(attached("by = \"hwmon\"\nbus = 1\naddress = 0x44")).isEqualTo(new Attached.Hwmon(1, 0x44));
        assertThat(attached("by = \"iio\"\ndevice = \"bme280\"")).isEqualTo(new Attached.Iio("bme280"));
        assertThat(attached("by = \"handed-in\"\ntopic = \"a/b\"")).isEqualTo(new Attached.HandedIn("a/b"));
    }

    @Test
    void withoutTheTableNothingIsAttached() {
        assertThat(read(SmallSite.TEXT)).isEqualTo(new Attached.NotAttached());
    }

    @Test
    void theExamplesCommentIsSound() throws IOException {
        assertThat(read(Example.live())).isEqualTo(new Attached.I2c(Attached.Chip.SHT4X, 1, 0x44));
    }

    @Test
    void allFaultsAreToldAtOnce() {
        assertThatThrownBy(() -> attached("by = \"i2c-sht4x\"\naddress = 0x80"))
                .hasMessageContaining("attached.address = 128 must lie between 8 and 119")
                .hasMessageContaining("attached.bus is missing");
        assertThatThrownBy(() -> attached("by = \"onewire\"")).hasMessageContaining("did you mean \"one-wire\"?");
        assertThatThrownBy(() -> attached("by = \"one-wire\"\ndevice = \"10-1\""))
                .hasMessageContaining("look into /sys/bus/w1/devices")
                .hasMessageContaining("cannot come from a 1-Wire thermometer");
    }

    @Test
    void twoSensorsDoNotShareAPlace() {
        String one = """
                [[sensor]]
                id = "%s"
                bench = "b"
                humidity = false
                uncertainty_K = 1
                [sensor.attached]
                by = "hwmon"
                bus = 1
                address = 0x44
                """;
        String text = SmallSite.with("[heater]", one.formatted("a") + one.formatted("b") + "[heater]");
        assertThatThrownBy(() -> read(text)).hasMessageContaining("attached is where another sensor sits too");
    }

    private static Attached attached(String table) {
        return read(SmallSite.with("[heater]", "[sensor.attached]\n" + table + "\n[heater]"));
    }

    private static Attached read(String text) {
        return SiteSettings.read(TomlTree.parse("tunnel.toml", text))
                .sensors()
                .get(0)
                .attached();
    }
}
