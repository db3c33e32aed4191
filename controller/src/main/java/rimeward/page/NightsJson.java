package rimeward.page;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rimeward.core.outlook.PlanPromise;
import rimeward.json.JsonText;
import rimeward.record.Lowest;
import rimeward.record.Night;
import rimeward.site.Site;

/** The season's nights beside what their plans promised. */
public final class NightsJson {
    private NightsJson() {}

    /** @param nights the newest first */
    public static String of(Site site, List<Night> nights, List<PlanPromise> plans) {
        Map<LocalDate, PlanPromise> byEvening = new LinkedHashMap<>();
        plans.forEach(plan -> byEvening.put(plan.evening(), plan));
        List<Map<String, Object>> all =
                nights.stream().map(night -> night(night, byEvening).map()).toList();
        return JsonText.of(new Members()
                .put("nights", all)
                .put("currency", site.tariff().currency())
                .map());
    }

    static Members night(Night night, Map<LocalDate, PlanPromise> plans) {
        Members all = new Members().put("night", night.evening().toString());
        if (night.bench() instanceof Lowest.Seen seen) {
            all.number("lowestC", seen.airC(), 2);
        }
        if (night.outside() instanceof Lowest.Seen seen) {
            all.number("outsideLowestC", seen.airC(), 2);
        }
        all.number("kwh", night.kWh(), 2)
                .number("cost", night.cost(), 2)
                .number("litres", night.litresEstimated(), 2)
                .number("seenS", night.seenS(), 0)
                .number("wetS", night.wetS(), 0)
                .put("alerts", night.alerts())
                .put("report", true);
        PlanPromise plan = plans.get(night.evening());
        if (plan != null) {
            all.put(
                    "plan",
                    new Members()
                            .number("lowestC", plan.lowestBenchC().value(), 2)
                            .number("kwh", plan.nightKWh(), 2)
                            .map());
        }
        return all;
    }
}
