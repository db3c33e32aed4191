package rimeward.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rimeward.alert.Alert;
import rimeward.core.outlook.PlanPromise;
import rimeward.json.JsonText;
import rimeward.record.FrameRow;
import rimeward.record.Night;
import rimeward.record.Switched;
import rimeward.site.Site;

/** One night of the record in full. */
public final class NightJson {
    private static final int FINE_STEP_S = 300;
    private static final int COARSE_STEP_S = 900;
    private static final int FEW = 400; // frames: a night that was thinned has one in ten minutes, and the changes

    private final Site site;
    private final NightSpan span;
    private final Optional<PlanPromise> plan;
    private final List<FrameRow> rows = new ArrayList<>();
    private final NightFacts facts;

    /** @param plan what was promised of it */
    public NightJson(Site site, NightSpan span, Optional<PlanPromise> plan) {
        this.site = site;
        this.span = span;
        this.plan = plan;
        facts = new NightFacts(site, floorC());
    }

    private double floorC() {
        return plan.map(PlanPromise::floorC).orElse(site.floorC());
    }

    /** Takes a kept frame; in the order they were taken. */
    public void add(FrameRow row) {
        rows.add(row);
        facts.add(row);
    }

    /** What they come to, with the rest of what is known of the night. */
    public String json(Night night, List<Switched> switches, List<Alert> alerts) {
        Members told = NightsJson.night(
                night, plan.map(each -> Map.of(each.evening(), each)).orElse(Map.of()));
        facts.into(told);
        return JsonText.of(new Members()
                .put("night", told.map())
                .put("columns", columns().map())
                .put("switches", switches.stream().map(this::switched).toList())
                .put(
                        "alerts",
                        alerts.stream()
                                .filter(Alert::isNew)
                                .map(NightJson::alert)
                                .toList())
                .put("currency", site.tariff().currency())
                .map());
    }

    private Columns columns() {
        int stepS = rows.size() < FEW ? COARSE_STEP_S : FINE_STEP_S;
        int steps = (int) ((span.toEpochS() - span.fromEpochS()) / stepS);
        Columns columns = new Columns(site, span.fromEpochS(), stepS, steps, floorC());
        Intervals whiles = new Intervals(columns::add);
        rows.forEach(row -> {
            columns.add(row);
            whiles.add(row);
        });
        return columns;
    }

    private Map<String, Object> switched(Switched switched) {
        return new Members()
                .put("s", switched.at().wall().epochS())
                .put("machine", switched.machine())
                .put("on", switched.on())
                .put("why", switched.why().sentence(site.degrees()))
                .map();
    }

    private static Map<String, Object> alert(Alert alert) {
        return new Members()
                .put("s", alert.at().wall().epochS())
                .put("title", alert.kind().title())
                .put("text", alert.text())
                .word("severity", alert.kind().severity())
                .map();
    }
}
