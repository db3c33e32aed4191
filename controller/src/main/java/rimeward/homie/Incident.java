package rimeward.homie;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import rimeward.alert.Alert;
import rimeward.core.reading.WallTime;

/**
 * One change of one alert, as it goes out.
 *
 * @param id the incident's, the same over repeats and its end
 * @param number the outbox's; rises, and never comes again
 */
record Incident(String id, long number, Alert alert) {
    static Incident of(long number, Alert alert) {
        String subject = alert.subject().toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9-]+", "-");
        return new Incident(Words.of(alert.kind()) + "-" + subject, number, alert);
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
        text.put("urgency", "Unknown");
        text.put("severity", "Unknown");
        text.put("certainty", "Unknown");
        text.put("responseType", "None");
        text.put("clockTrusted", wall.trusted());
        if (wall.trusted()) { // a wrong time is worse than none
            text.put(
                    "at",
                    Instant.ofEpochSecond(Math.floorDiv(wall.epochMs(), 1000L)).toString());
        }
        text.put("text", alert.text());
        return JsonText.of(text);
    }
}
