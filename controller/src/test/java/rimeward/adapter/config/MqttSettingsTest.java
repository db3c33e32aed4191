package rimeward.adapter.config;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rimeward.fixture.Example;
import rimeward.site.Messaging;

/** Where messages go, and that nothing secret goes there in the clear. */
class MqttSettingsTest {

    @Test
    void withoutTheTableNobodyIsSpokenTo() {
        assertThat(read("")).isEqualTo(new Messaging.None());
    }

    @Test
    void aBrokerOnThisMachineNeedsNoMore() {
        assertThat(read("[mqtt]\nhost = \"localhost\"\ntls = false\n"))
                .isEqualTo(new Messaging.Mqtt(
                        "localhost",
                        1883,
                        new Messaging.Security.Plain(false),
                        new Messaging.Login.None(),
                        "homie",
                        List.of(),
                        false));
    }

    @Test
    void theExamplesCommentsAreSound() throws IOException {
        Messaging.Mqtt mqtt = (Messaging.Mqtt)
                SiteSettings.read(TomlTree.parse("tunnel.toml", Example.live())).messaging();
        assertThat(mqtt.security())
                .isEqualTo(new Messaging.Security.Tls(
                        new Messaging.Trust.Own("/etc/rimeward/ca.pem"),
                        new Messaging.Identity.Pkcs12("/etc/rimeward/hallin-rigg.p12", "/etc/rimeward/p12-password")));
        assertThat(mqtt.login())
                .isEqualTo(new Messaging.Login.Password("hallin-rigg", "/etc/rimeward/broker-password"));
        assertThat(mqtt.commands()).containsExactly(Messaging.Command.ACKNOWLEDGE);
        assertThat(mqtt.logs()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"192.168.1.20", "broker.hallin.example", "127.0.0.1.hallin.example", "0.0.0.0"})
    void nothingGoesUnencryptedToAnotherMachineUnlessTold(String host) {
        String plain = "[mqtt]\nhost = \"" + host + "\"\ntls = false\n";
        assertThatThrownBy(() -> read(plain))
                .hasMessageContaining("mqtt.tls = false sends the password and all messages to " + host
                        + " unencrypted; set tls = true, or, where nobody else is on that network, plain_ok = true");
        assertThat(read(plain + "plain_ok = true\n")).isInstanceOf(Messaging.Mqtt.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"localhost", "127.0.0.1", "127.1.2.3", "::1"})
    void thisMachineMayBeSpokenToUnencrypted(String host) {
        assertThat(read("[mqtt]\nhost = \"" + host + "\"\ntls = false\n")).isInstanceOf(Messaging.Mqtt.class);
    }

    @Test
    void aPasswordInTheSettingsIsRefusedAndNotRepeated() {
        assertThatThrownBy(() -> read("[mqtt]\nhost = \"localhost\"\ntls = false\npassword = \"hush\"\n"))
                .hasMessageContaining("must not stand in the settings")
                .hasMessageNotContaining("hush");
    }

    @Test
    void faultsAreToldAtOnce() {
        assertThatThrownBy(() -> read("""
                        [mqtt]
                        host = " "
                        tls = true
                        port = 0
                        plain_ok = true
                        user = "hallin-rigg"
                        certificate_file = "a.p12"
                        domain = "a/b"
                        commands = ["acknowledged", "plan-now"]
                        retries = 3
                        """))
                .hasMessageContaining("mqtt.host = \" \" is empty")
                .hasMessageContaining("mqtt.port = 0 must lie between 1 and 65535")
                .hasMessageContaining("mqtt.plain_ok = true contradicts tls = true")
                .hasMessageContaining("is one half of a login; add password_file")
                .hasMessageContaining("goes with certificate_password_file")
                .hasMessageContaining("mqtt.domain = \"a/b\" must be lower-case letters")
                .hasMessageContaining("did you mean \"acknowledge\"?")
                .hasMessageContaining("mqtt.retries = 3 is not a known key");
    }

    @Test
    void whatOnlyEncryptionUsesIsRefusedWithoutIt() {
        assertThatThrownBy(() -> read("[mqtt]\nhost = \"localhost\"\ntls = false\nca_file = \"ca.pem\"\n"))
                .hasMessageContaining("mqtt.ca_file = \"ca.pem\" has no use without tls = true");
    }

    private static Messaging read(String table) {
        return SiteSettings.read(TomlTree.parse("tunnel.toml", SmallSite.TEXT + table))
                .messaging();
    }
}
