package rimeward.homie;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rimeward.core.outlook.AiringWindow;
import rimeward.core.outlook.Alternative;
import rimeward.core.outlook.Alternatives;
import rimeward.core.outlook.NightPlan;
import rimeward.core.outlook.PlanHour;
import rimeward.core.outlook.PlanText;
import rimeward.core.outlook.PreWarm;
import rimeward.core.outlook.Tank;
import rimeward.core.tunnel.Figure;
import rimeward.json.JsonText;
import rimeward.site.Site;

/** A plan as JSON, for programs: times by RFC 3339 in UTC, temperatures in °C, each number with its spread (one standard deviation). */
public final class PlanJson {
    private PlanJson() {}

    /** One line. */
    public static String of(NightPlan plan, Site site) {
        return JsonText.of(members(plan, site));
    }

    /** One line, with what plainer ways would take. */
    public static String of(NightPlan plan, Alternatives others, Site site) {
        Map<String, Object> root = members(plan, site);
        List<Object> ways = new ArrayList<>();
        others.all().forEach(each -> ways.add(alternative(each)));
        root.put("alternatives", ways);
        return JsonText.of(root);
    }

    private static Map<String, Object> members(NightPlan plan, Site site) {
        Map<String, Object> root = new LinkedHashMap<>();
        root.put("site", site.id());
        root.put("made", time(plan.madeEpochS()));
        root.put("ends", time(plan.endEpochS()));
        root.put("floorC", site.floorC());
        root.put("chanceCold", plan.chanceCold());
        root.put("statedChance", plan.statedChance());
        plan.coldFromEpochS().ifPresent(atS -> root.put("coldFrom", time(atS)));
        root.put("lowestOutsideC", figure(plan.lowestOutsideC()));
        root.put("lowestBenchC", figure(plan.lowestBenchC()));
        root.put("lowestAllOffC", figure(plan.lowestFreeFloatC()));
        root.put("kWh", figure(plan.kWh()));
        root.put("kWhEach", each(site, plan.kWhEach()));
        root.put("cost", figure(plan.cost()));
        root.put("currency", site.tariff().currency());
        root.put("litres", figure(plan.litres()));
        tank(plan.tank(), root);
        root.put("airing", plan.airing().stream().map(PlanJson::airing).toList());
        preWarm(plan.preWarm(), root);
        root.put("guess", plan.basis().isGuess());
        root.put("restsOn", plan.basis().inWords());
        root.put("says", PlanText.sentences(plan, site));
        root.put("hours", plan.hours().stream().map(hour -> hour(hour, site)).toList());
        return root;
    }

    private static Map<String, Object> hour(PlanHour hour, Site site) {
        Map<String, Object> text = new LinkedHashMap<>();
        text.put("from", time(hour.fromEpochS()));
        text.put("lengthS", hour.lengthS());
        text.put("outsideC", figure(hour.outsideC()));
        text.put("allOffC", figure(hour.freeFloatC()));
        text.put("benchC", figure(hour.benchC()));
        text.put("rhPercent", figure(hour.rhPercent()));
        text.put("holder", hour.holder().inWords());
        text.put("shares", each(site, hour.shares()));
        text.put("kWhEach", each(site, hour.kWhEach()));
        text.put("kWh", figure(hour.kWh()));
        text.put("cost", figure(hour.cost()));
        text.put("litres", figure(hour.litres()));
        text.put("spareW", figure(hour.spareW()));
        text.put("chanceCold", hour.chanceCold());
        return text;
    }

    private static Map<String, Object> alternative(Alternative each) {
        Map<String, Object> text = new LinkedHashMap<>();
        text.put("way", each.way().id());
        text.put("kWh", figure(each.kWh()));
        text.put("cost", figure(each.cost()));
        text.put("lowestBenchC", figure(each.lowestBenchC()));
        text.put("savedKWh", figure(each.savedKWh()));
        text.put("savedCost", figure(each.savedCost()));
        text.put("says", each.saved());
        return text;
    }

    private static void tank(Tank tank, Map<String, Object> root) {
        if (tank instanceof Tank.FullAt full) {
            root.put("tankLeftL", full.leftL());
            root.put("tankFullAt", time(full.epochS()));
        } else if (tank instanceof Tank.Lasts lasts) {
            root.put("tankLeftL", lasts.leftL());
        }
    }

    private static void preWarm(PreWarm preWarm, Map<String, Object> root) {
        if (preWarm instanceof PreWarm.Worth worth) {
            Map<String, Object> text = new LinkedHashMap<>();
            text.put("from", time(worth.fromEpochS()));
            text.put("to", time(worth.toEpochS()));
            text.put("byK", worth.byK());
            text.put("saved", figure(worth.saved()));
            root.put("preWarm", text);
        }
    }

    private static Map<String, Object> airing(AiringWindow window) {
        Map<String, Object> text = new LinkedHashMap<>();
        text.put("from", time(window.fromEpochS()));
        text.put("to", time(window.toEpochS()));
        text.put("drierGPerKg", 1000 * window.drierKgPerKg());
        return text;
    }

    private static Map<String, Object> each(Site site, List<Double> values) {
        Map<String, Object> text = new LinkedHashMap<>();
        for (int i = 0; i < values.size(); i++) {
            text.put(site.machineIds().get(i), values.get(i));
        }
        return text;
    }

    private static Map<String, Object> figure(Figure figure) {
        Map<String, Object> text = new LinkedHashMap<>();
        text.put("value", figure.value());
        text.put("spread", figure.standardError());
        return text;
    }

    private static String time(long epochS) {
        return Instant.ofEpochSecond(epochS).toString();
    }
}
