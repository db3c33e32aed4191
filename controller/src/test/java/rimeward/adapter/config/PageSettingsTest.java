package rimeward.adapter.config;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rimeward.site.Page;

/** Who may look at the page: this machine only, unless somebody said otherwise and named a secret. */
class PageSettingsTest {
    private static final String SHIPPED = "[page]\n";

    @Test
    void theExampleShowsItToThisMachineOnly() {
        assertThat(read("")).isEqualTo(Page.onLoopback(8484));
    }

    @Test
    void itCanBeSwitchedOff() {
        assertThat(read("on = false\n")).isEqualTo(new Page.None());
    }

    @Test
    void onTheNetworkItNamesASecret() {
        assertThat(
                        read(
                                "listen = \"0.0.0.0\"\ntoken_file = \"/etc/rimeward/page-token\"\nhosts = [\"tunnel.local\"]\n"))
                .isEqualTo(new Page.Served(
                        "0.0.0.0",
                        8484,
                        new Page.TokenFile.Own("/etc/rimeward/page-token"),
                        List.of("tunnel.local"),
                        new Page.Address.Unknown()));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "listen = \"0.0.0.0\" | add token_file",
                "listen = \"192.168.1.7\" | add token_file",
                "listen = \"tunnel.local\" | is no address in numbers",
                "hosts = [\"http://tunnel.local\"] | is no host's name",
                "hosts = [\"tunnel.local:8484\"] | is no host's name",
                "address = \"https://tunnel.example\" | end with a slash",
                "address = \"javascript:alert(1)/\" | must begin with http:// or https://",
                "token = \"wintergreen\" | must not stand in the settings",
                "domain = \"x\" | is not a known key",
            })
    void whatCannotBeMeantIsRefused(String line, String why) {
        assertThatThrownBy(() -> read(line + "\n"))
                .isInstanceOf(BadSettings.class)
                .hasMessageContaining(why)
                .hasMessageNotContaining("wintergreen");
    }

    private static Page read(String lines) {
        try {
            String example = Files.readString(Path.of("..", "config", "tunnel.toml"));
            String settings = example.replace(SHIPPED, SHIPPED + lines);
            return SiteSettings.read(TomlTree.parse("tunnel.toml", settings)).page();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }
}
