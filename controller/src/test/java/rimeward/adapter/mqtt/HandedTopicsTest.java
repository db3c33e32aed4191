package rimeward.adapter.mqtt;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import rimeward.fixture.Sites;
import rimeward.site.Attached;
import rimeward.site.Sensor;

class HandedTopicsTest {
    private static final String TOPIC = "garden/far-bench/reading";

    private final List<String> taken = new ArrayList<>();
    private final Sensor usual = Sites.metered().sensors().get(0);
    private final Sensor sensor = new Sensor(
            usual.id(),
            usual.place(),
            usual.hasHumidity(),
            usual.uncertaintyK(),
            usual.uncertaintyPercent(),
            usual.limits(),
            new Attached.HandedIn(TOPIC));
    private final HandedTopics topics =
            new HandedTopics(List.of(usual, sensor), (id, reading) -> taken.add(id + " " + reading.airC()));

    @Test
    void aReadingReachesTheSensorOfItsTopicAndNoOther() {
        assertThat(topics.topics()).containsExactly(TOPIC);
        assertThat(topics.has("garden/other")).isFalse();
        topics.take(heard("4.1", false));
        topics.take(heard("warm", false));
        topics.take(heard("9.9", true));
        topics.take(heard("4.2", false));
        String id = sensor.id();
        assertThat(taken).containsExactly(id + " Value[value=4.1, ageS=0.0]", id + " Value[value=4.2, ageS=0.0]");
    }

    private static Post.Heard heard(String payload, boolean retained) {
        return new Post.Heard(TOPIC, payload.getBytes(UTF_8), retained, false);
    }
}
