package rimeward.page;

import java.util.Map;
import rimeward.core.outlook.NightPlan;
import rimeward.core.outlook.PastNight;
import rimeward.core.outlook.PlanText;
import rimeward.homie.PlanJson;
import rimeward.json.JsonText;
import rimeward.site.Forecasting;
import rimeward.site.Site;

/** The coming night's plan; until there is one, what it waits for. */
public final class Tonight {
    private static final String WAITS = "No plan of the coming night yet. The floor is kept by what the sensors show.";

    private Tonight() {}

    /** In full. */
    public static String json(Sight sight) {
        Planned planned = sight.planOfNight();
        Site site = sight.site();
        PastNight past = sight.past();
        Members rest = new Members();
        if (past != null) {
            rest.put("lastNight", past.inWords(site));
        }
        if (planned == null) {
            return JsonText.of(rest.put("waitingFor", WAITS).map());
        }
        NightPlan plan = planned.plan();
        rest.put("text", PlanText.sentences(plan, site));
        if (site.forecasting() instanceof Forecasting.FromService service) {
            rest.put("attribution", "Weather by " + service.source() + ".");
        }
        String text = JsonText.of(rest.map());
        return "{\"plan\":" + PlanJson.of(plan, planned.others(), site) + "," + text.substring(1);
    }

    static Map<String, Object> brief(Sight sight) {
        NightPlan plan = sight.coming();
        if (plan == null) {
            return Map.of("waitingFor", WAITS);
        }
        return new Members()
                .put("sentence", PlanText.brief(plan, sight.site()))
                .number("lowestC", plan.lowestBenchC().value(), 2)
                .number("lowestSpreadK", plan.lowestBenchC().standardError(), 2)
                .number("kwh", plan.kWh().value(), 2)
                .number("cost", plan.cost().value(), 2)
                .number("frostChancePercent", 100 * plan.chanceCold(), 0)
                .map();
    }
}
