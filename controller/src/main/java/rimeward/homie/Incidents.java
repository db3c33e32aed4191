package rimeward.homie;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What stands wrong, as the broker keeps it: for each incident a text for people and an object for machines, both gone once it is
 * over. Belongs to the device.
 */
final class Incidents {
    static final String TEXT = "/$alert/";
    static final String OBJECT = "/$incident/";

    private final String base;
    private final String device;
    private final Map<String, byte[]> standing = new LinkedHashMap<>();
    private final Set<String> kept = new LinkedHashSet<>();

    Incidents(String base, String device) {
        this.base = base;
        this.device = device;
    }

    /** How one is told. Who listens hears of its end; who comes later finds nothing of it. */
    List<Message> of(Incident incident) {
        String text = base + TEXT + incident.id();
        String object = base + OBJECT + incident.id();
        Message says = Message.retained(object, incident.json(device));
        if (incident.isOver()) {
            standing.remove(text);
            standing.remove(object);
            return List.of(Message.deleting(text), says, Message.deleting(object));
        }
        Message reads = Message.retained(text, incident.alert().text());
        standing.put(text, reads.payload());
        standing.put(object, says.payload());
        return List.of(reads, says);
    }

    boolean isOurs(String topic) {
        return topic.startsWith(base + TEXT) || topic.startsWith(base + OBJECT);
    }

    /** What the broker kept is an earlier run's where this one knows nothing of it yet: it stands until its end is told. */
    void kept(String topic, byte[] payload) {
        if (payload.length > 0) {
            kept.add(topic);
            standing.putIfAbsent(topic, payload);
        }
    }

    /** On a new line the broker is to say anew what it kept. */
    void newLine() {
        kept.clear();
    }

    /** What stands and the broker has lost. */
    List<Message> lost() {
        List<Message> messages = new ArrayList<>();
        standing.forEach((topic, payload) -> {
            if (!kept.contains(topic)) {
                messages.add(new Message(topic, payload, 2, true));
            }
        });
        return messages;
    }

    int count() {
        return (int) standing.keySet().stream()
                .filter(topic -> topic.startsWith(base + TEXT))
                .count();
    }
}
