package rimeward.page;

import java.util.Map;
import rimeward.core.outlook.NightPlan;
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
        NightPlan plan = sight.coming();
        if (plan == null) {
            return JsonText.of(Map.of("waitingFor", WAITS));
        }
        Site site = sight.site();
        Members rest = new Members().put("text", PlanText.sentences(plan, site));
        if (site.forecasting() instanceof Forecasting.FromService service) {
            rest.put("attribution", "Weather by " + name(service) + ", CC BY 4.0.");
        }
        String text = JsonText.of(rest.map());
        return "{\"plan\":" + PlanJson.of(plan, site) + "," + text.substring(1);
    }

    private static String name(Forecasting.FromService service) {
        return service.url().equals(Forecasting.FromService.PUBLISHED_URL) ? "MET Norway" : service.host();
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
