package rimeward.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import rimeward.core.Outcome;
import rimeward.core.guard.DutyWords;
import rimeward.core.judgement.Damp;
import rimeward.core.judgement.Inside;
import rimeward.core.judgement.Outside;
import rimeward.json.JsonText;
import rimeward.site.Machine;
import rimeward.site.Plant;
import rimeward.site.Site;

/** How the tunnel is now, in one line. */
public final class NowJson {
    private final Sight sight;
    private final Site site;
    private final Outcome outcome;

    private NowJson(Sight sight) {
        this.sight = sight;
        site = sight.site();
        outcome = sight.outcome();
    }

    public static String of(Sight sight) {
        return JsonText.of(new NowJson(sight).whole());
    }

    private Map<String, Object> whole() {
        Members all = new Members()
                .put("epochS", sight.epochS())
                .number("ageS", sight.ageS(), 1)
                .put("clockTrusted", outcome.frame().tick().wall().trusted())
                .put("site", site())
                .put("plants", PlantsSaid.of(site, outcome))
                .put("holding", holding())
                .put("air", air())
                .put("outside", outside())
                .put("tonight", Tonight.brief(sight))
                .put("hands", HandsNeeded.of(sight))
                .put("alerts", sight.alerts().stream().map(NowJson::alert).toList());
        Sight.Answered answer = sight.answer();
        if (answer != null) {
            all.put(
                    "answer",
                    new Members()
                            .put("epochS", answer.epochS())
                            .put("granted", answer.granted())
                            .put("text", answer.text())
                            .map());
        }
        return all.map();
    }

    private Map<String, Object> site() {
        Plant tenderest = site.plants().stream()
                .max(Comparator.comparingDouble(Plant::minimumC))
                .orElseThrow();
        return new Members()
                .put("id", site.id())
                .put("name", site.name())
                .put("zone", site.zone().getId())
                .number("floorC", outcome.floorC(), 2)
                .put(
                        "floorPlants",
                        "The tenderest plants, " + tenderest.name() + ", must not get colder than "
                                + site.degrees().text(tenderest.minimumC()) + ".")
                .number("floorLeastC", site.lowestFloorC(), 2)
                .number("floorMostC", site.highestFloorC(), 2)
                .number("dryOffPercent", site.targets().dryOffPercent(), 1)
                .number("dryOnPercent", site.targets().dryOnPercent(), 1)
                .put("currency", site.tariff().currency())
                .map();
    }

    private Map<String, Object> holding() {
        List<Object> machines = new ArrayList<>();
        for (int i = 0; i < site.machines().size(); i++) {
            Machine machine = site.machines().get(i);
            machines.add(new Members()
                    .put("id", machine.id())
                    .word("role", machine.role())
                    .put("closed", outcome.guarded().closed().has(i))
                    .put("why", outcome.guarded().reasons().get(i).sentence(site.degrees()))
                    .map());
        }
        return new Members()
                .put("duty", duty())
                .put("sentence", DutyWords.of(site, outcome.guarded()))
                .put("machines", machines)
                .map();
    }

    private String duty() {
        return switch (outcome.guarded().holder()) {
            case NOT_NEEDED -> "none";
            case HEATER -> DutyWords.helpsToo(site, outcome.guarded()) ? "both" : "heater";
            case DRYER -> "dryer";
            case BARRED, NOBODY -> "nobody";
        };
    }

    private Map<String, Object> air() {
        Members air = new Members();
        if (!(outcome.judgement().damp() instanceof Damp.Seen damp)) {
            return air.put("sentence", "No humidity inside is believed.").map();
        }
        air.number("rhPercent", damp.wettestRhPercent(), 1)
                .number("dewPointC", damp.dewPointC(), 2)
                .put("wettest", wettest());
        String says = "Where it is wettest the air is at " + StrictMath.round(damp.wettestRhPercent()) + " %";
        if (!(outcome.judgement().inside() instanceof Inside.Seen inside)) {
            return air.put("sentence", says + ".").map();
        }
        double gapK = inside.coldestC() - damp.dewPointC();
        return air.number("dewGapK", gapK, 2)
                .put(
                        "sentence",
                        says + (gapK > 0 ? dry(gapK) : ", and the coldest bench is at its dew point: it wets."))
                .map();
    }

    private String dry(double gapK) {
        return "; the coldest bench is " + site.degrees().span(gapK) + " above its dew point.";
    }

    /** The bench whose humidity is highest among those believed. */
    private String wettest() {
        String name = "";
        double mostPercent = -1;
        for (int i = 0; i < site.sensors().size(); i++) {
            OptionalDouble rh = Believed.rhPercent(outcome, i);
            if (site.sensors().get(i).place().isInside() && rh.isPresent() && rh.getAsDouble() > mostPercent) {
                mostPercent = rh.getAsDouble();
                name = Believed.place(site, i);
            }
        }
        return name;
    }

    private Map<String, Object> outside() {
        Members outside = new Members();
        if (outcome.judgement().outside() instanceof Outside.Seen seen) {
            outside.number("airC", seen.airC(), 2);
            if (outcome.judgement().inside() instanceof Inside.Seen inside) {
                outside.number("liftK", inside.middleC() - seen.airC(), 2);
            }
        }
        for (int i = 0; i < site.sensors().size(); i++) {
            if (!site.sensors().get(i).place().isInside()) {
                outside.number("rhPercent", Believed.rhPercent(outcome, i), 1);
            }
        }
        return outside.map();
    }

    static Map<String, Object> alert(StandingAlert alert) {
        return new Members()
                .put("incident", alert.incident())
                .put("kind", alert.kind().slug())
                .put("title", alert.kind().title())
                .put("subject", alert.subject())
                .word("severity", alert.kind().severity())
                .put("sinceEpochS", alert.sinceEpochS())
                .put("text", alert.text())
                .put("acknowledged", alert.acknowledged())
                .map();
    }
}
