package rimeward.adapter.mqtt;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.List;
import java.util.Locale;
import rimeward.alert.Alert;
import rimeward.core.Stepped;
import rimeward.homie.Message;
import rimeward.port.Outbox;
import rimeward.site.Site;

/** Whether the service lives, and its alerts: the least that a Homie device has. */
public final class BareTree implements DeviceTree {
    private final String name;
    private final String root;

    public BareTree(Site site, String domain) {
        name = site.name();
        root = domain + "/5/" + site.id() + "/";
    }

    private Message retained(String topic, String text) {
        return new Message(root + topic, text.getBytes(UTF_8), 1, true);
    }

    @Override
    public Message will() {
        return retained("$state", "lost");
    }

    @Override
    public List<String> subscriptions() {
        return List.of(root + "$alert/+");
    }

    @Override
    public List<Message> atConnect() {
        return List.of(
                retained("$state", "init"),
                retained(
                        "$description",
                        "{\"homie\":\"5.0\",\"version\":1,\"name\":\"" + name.replaceAll("[\"\\\\]", "") + "\"}"),
                retained("$state", "ready"));
    }

    @Override
    public List<Message> after(Stepped stepped) {
        return List.of();
    }

    @Override
    public List<Message> of(Outbox.Entry entry) {
        Alert alert = entry.alert();
        String id = (alert.kind().name() + "-" + alert.subject())
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-");
        return List.of(retained("$alert/" + id, alert.text()));
    }

    @Override
    public List<Message> atStop() {
        return List.of(retained("$state", "disconnected"));
    }

    @Override
    public void heard(String topic, byte[] payload, boolean retained) {}
}
