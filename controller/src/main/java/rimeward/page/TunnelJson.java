package rimeward.page;

import java.util.List;
import java.util.Map;
import rimeward.core.tunnel.Figure;
import rimeward.core.tunnel.Lesson;
import rimeward.core.tunnel.LessonText;
import rimeward.core.tunnel.TunnelEstimate;
import rimeward.json.JsonText;
import rimeward.site.Site;
import rimeward.site.Tunnel;

/** What is known of the tunnel itself: learned from its nights, and as the settings have it. */
public final class TunnelJson {
    private static final String WAITS =
            "What this tunnel loses is learned from its own nights. Nothing has been learned since the service started;"
                    + " until then the settings count.";

    private TunnelJson() {}

    public static String of(Sight sight) {
        Members all = new Members();
        Lesson lesson = sight.lesson();
        if (lesson instanceof Lesson.Learned learned) {
            all.put("learned", learned(learned, sight.site()));
        } else {
            all.put(
                    "waitingFor",
                    lesson == null
                            ? WAITS
                            : LessonText.sheet(lesson, sight.site()).strip());
        }
        return JsonText.of(all.put("assumed", assumed(sight.site().tunnel())).map());
    }

    private static Map<String, Object> learned(Lesson.Learned learned, Site site) {
        TunnelEstimate found = learned.estimate();
        return new Members()
                .put("heatLossWPerK", figure(found.heatLossWPerK(), 1))
                .put("massCouplingWPerK", figure(found.massCouplingWPerK(), 1))
                .put("airCapacityJPerK", figure(found.airCapacityJPerK(), 0))
                .put("massCapacityJPerK", figure(found.massCapacityJPerK(), 0))
                .put("nights", found.nights())
                .put("text", List.of(LessonText.sheet(learned, site).strip().split("\n")))
                .map();
    }

    private static Map<String, Object> figure(Figure figure, int decimals) {
        return new Members()
                .number("value", figure.value(), decimals)
                .number("least", figure.least(), decimals)
                .number("most", figure.most(), decimals)
                .map();
    }

    private static Map<String, Object> assumed(Tunnel tunnel) {
        return new Members()
                .number("heatLossWPerK", tunnel.heatLossWPerK(), 1)
                .number("massCouplingWPerK", tunnel.massCouplingWPerK(), 1)
                .number("airCapacityJPerK", tunnel.airCapacityJPerK(), 0)
                .number("massCapacityJPerK", tunnel.massCapacityJPerK(), 0)
                .number("floorAreaM2", tunnel.floorAreaM2(), 1)
                .number("volumeM3", tunnel.volumeM3(), 1)
                .map();
    }
}
