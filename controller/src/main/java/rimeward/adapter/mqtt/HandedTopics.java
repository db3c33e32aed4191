package rimeward.adapter.mqtt;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rimeward.homie.HandedReading;
import rimeward.port.HandedReadings;
import rimeward.site.Attached;
import rimeward.site.Sensor;

/** Topics under which others hand readings in, each with its sensor. For the line's thread. */
final class HandedTopics {
    private static final Logger LOG = LoggerFactory.getLogger(HandedTopics.class);

    private final Map<String, String> sensors = new LinkedHashMap<>();
    private final HandedReadings readings;
    private final Set<String> refused = new HashSet<>();

    HandedTopics(List<Sensor> all, HandedReadings readings) {
        this.readings = readings;
        for (Sensor sensor : all) {
            if (sensor.attached() instanceof Attached.HandedIn at) {
                sensors.put(at.topic(), sensor.id());
            }
        }
    }

    /** To be subscribed. */
    List<String> topics() {
        return List.copyOf(sensors.keySet());
    }

    boolean has(String topic) {
        return sensors.containsKey(topic);
    }

    /** Hands a reading on; the log hears of the first of a row that cannot be used, and of the first that can again. */
    void take(Post.Heard heard) {
        String sensor = sensors.get(heard.topic());
        if (sensor == null) {
            return;
        }
        HandedReading found = HandedReading.read(heard.payload(), heard.retained());
        if (found instanceof HandedReading.Taken taken) {
            readings.accept(sensor, taken.reading());
            if (refused.remove(sensor)) {
                LOG.info("readings of {} under {} can be used again", sensor, heard.topic());
            }
        } else if (found instanceof HandedReading.Refused no && refused.add(sensor)) {
            LOG.warn("a reading of {} under {} cannot be used: {}", sensor, heard.topic(), no.why());
        }
    }
}
