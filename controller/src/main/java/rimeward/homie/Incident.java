package rimeward.homie;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import rimeward.alert.Alert;
import rimeward.alert.Response;
import rimeward.core.reading.WallTime;
import rimeward.json.JsonText;

/**
 * One change of one alert, as it goes out.
 *
 * @param id the incident's, the same over repeats and its end
 * @param number the outbox's; rises, and never comes again
 */
record Incident(String id, long number, Alert alert) {
    static Incident of(long number, Alert alert) {
        return new Incident(alert.id(), number, alert);
    }

    boolean isOver() {
        return alert.change() == Alert.Change.CLEARED;
    }

    /** For machines; CAP is the Common Alerting Protocol 1.2 (OASIS, 2010). */
    String json(String device) {
        WallTime wall = alert.at().wall();
        Map<String, Object> text = new LinkedHashMap<>();
        text.put("id", id);
        text.put("number", number);
        text.put("device", device);
        text.put("kind", Words.of(alert.kind()));
        text.put("subject", alert.subject());
        text.put("status", Words.of(alert.change()));
        text.put("urgency", alert.kind().urgency().word());
        text.put("severity", alert.kind().severity().word());
        text.put("certainty", alert.kind().certainty().word());
        text.put("responseType", (isOver() ? Response.ALL_CLEAR : alert.kind().response()).word());
        text.put("clockTrusted", wall.trusted());
        if (wall.trusted()) { // a wrong time is worse than none
            text.put("at", Instant.ofEpochSecond(wall.epochS()).toString());
        }
        text.put("text", alert.text());
        return JsonText.of(text);
    }
}
