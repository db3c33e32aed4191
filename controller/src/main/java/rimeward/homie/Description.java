package rimeward.homie;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rimeward.json.Json;
import rimeward.json.JsonText;

/**
 * What {@code $description} says. Its version rises with every change, over restarts too: what the broker kept is asked first, and where
 * that is another description, ours gets the number after it. So no clock is needed that might be wrong, and no file of our own.
 */
final class Description {
    /** Whole numbers up to here are the same to every reader of JSON (RFC 8259, 6). */
    private static final long MOST = (1L << 53) - 1;

    /** Our alerts' details are an extension of the convention; its topics begin with {@code $incident}. */
    private static final String EXTENSION = "io.github.rimeward.incident:1.0:[5.x]";

    private Description() {}

    static String of(String name, long version, List<Node> nodes) {
        Map<String, Object> root = new LinkedHashMap<>();
        root.put("homie", "5.0");
        root.put("version", version);
        root.put("name", name);
        root.put("type", "tunnel");
        Map<String, Object> all = new LinkedHashMap<>();
        nodes.forEach(node -> all.put(node.id(), node(node)));
        root.put("nodes", all);
        root.put("extensions", List.of(EXTENSION));
        return JsonText.of(root);
    }

    private static Map<String, Object> node(Node node) {
        Map<String, Object> properties = new LinkedHashMap<>();
        node.leaves().forEach(leaf -> properties.put(leaf.property().id(), property(leaf.property())));
        Map<String, Object> text = new LinkedHashMap<>();
        text.put("name", node.name());
        text.put("type", node.type());
        text.put("properties", properties);
        return text;
    }

    private static Map<String, Object> property(Property property) {
        Map<String, Object> text = new LinkedHashMap<>();
        text.put("name", property.name());
        text.put("datatype", property.datatype().word());
        text.put("settable", property.settable());
        text.put("retained", property.retained());
        if (!property.format().isEmpty()) {
            text.put("format", property.format());
        }
        if (!property.unit().isEmpty()) {
            text.put("unit", property.unit());
        }
        return text;
    }

    /** One that the broker kept, as far as we need it; empty where it is not one. */
    static Optional<Earlier> earlier(byte[] payload) {
        try {
            String text = Payload.text(payload, 1 << 20);
            Json json = Payload.json(text);
            List<String> topics = new ArrayList<>();
            Json nodes = json.get("nodes").orElse(new Json.Word("null"));
            for (String node : nodes.names()) {
                Json properties =
                        nodes.get(node).flatMap(each -> each.get("properties")).orElse(nodes);
                properties.names().forEach(property -> topics.add(node + "/" + property));
            }
            boolean sound = json.get("version").orElse(json) instanceof Json.Figure number
                    && number.value() >= 0
                    && number.value() < MOST;
            return sound ? Optional.of(new Earlier(text, version(json), topics)) : Optional.empty();
        } catch (Misheard e) {
            return Optional.empty();
        }
    }

    private static long version(Json json) {
        return json.get("version").orElseThrow() instanceof Json.Figure number ? (long) number.value() : 0;
    }

    /**
     * What was said before.
     *
     * @param topics its properties, as node/property
     */
    record Earlier(String text, long version, List<String> topics) {
        Earlier {
            topics = topics.stream()
                    .filter(topic -> topic.matches("[a-z0-9-]+/[a-z0-9-]+")) // no wildcard may come in this way
                    .toList();
        }
    }
}
