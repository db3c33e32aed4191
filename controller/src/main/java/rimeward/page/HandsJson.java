package rimeward.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import rimeward.alert.AlertKind;
import rimeward.alert.AlertSlot;
import rimeward.core.Outcome;
import rimeward.core.guard.GuardState;
import rimeward.core.guard.StandDowns;
import rimeward.core.judgement.Verdict;
import rimeward.core.outlook.NightPlan;
import rimeward.core.outlook.Tank;
import rimeward.core.reading.Reading;
import rimeward.core.reading.SensorReading;
import rimeward.json.JsonText;
import rimeward.record.Draw;
import rimeward.record.SavedState;
import rimeward.site.Drying;
import rimeward.site.Machine;
import rimeward.site.Site;

/** What hands and tools are needed for: sensors, machines, tank, circuit, and the service itself. */
public final class HandsJson {
    private final Sight sight;
    private final Site site;
    private final Outcome outcome;
    private final MachineDay day;

    private HandsJson(Sight sight, MachineDay day) {
        this.sight = sight;
        this.day = day;
        site = sight.site();
        outcome = sight.outcome();
    }

    public static String of(Sight sight, MachineDay day) {
        return JsonText.of(new HandsJson(sight, day).whole());
    }

    private Map<String, Object> whole() {
        Members all = new Members().put("sensors", sensors()).put("machines", machines());
        if (site.drying() instanceof Drying.Dryer dryer && !Double.isInfinite(dryer.tankL())) {
            all.put("tank", tank(dryer));
        }
        all.put(
                "circuit",
                new Members()
                        .number("nowW", Draw.totalW(site, outcome.guarded().closed(), outcome.frame()), 0)
                        .number("mostW", site.circuit().limitW(), 0)
                        .map());
        StandDowns down = outcome.guarded().next().standDowns();
        if (!down.machines().isEmpty()) {
            double longestS =
                    down.leftS().stream().mapToDouble(Double::doubleValue).max().orElse(0);
            all.put(
                    "standDown",
                    new Members()
                            .put("untilEpochS", sight.epochS() + (long) StrictMath.ceil(longestS))
                            .put("machines", site.inWords(down.machines()))
                            .map());
        }
        return all.put(
                        "service",
                        new Members()
                                .put("version", sight.version())
                                .put("startedEpochS", sight.startedEpochS())
                                .put("recordFailing", sight.recordFailing())
                                .put("brokerFailing", sight.brokerFailing())
                                .map())
                .map();
    }

    // ---- sensors

    private List<Object> sensors() {
        List<Object> all = new ArrayList<>();
        for (int i = 0; i < site.sensors().size(); i++) {
            all.add(sensor(i));
        }
        return all;
    }

    private Map<String, Object> sensor(int at) {
        SensorReading said = outcome.frame().senses().sensors().get(at);
        Verdict air = outcome.judgement().airVerdicts().get(at);
        Verdict rh = outcome.judgement().rhVerdicts().get(at);
        Verdict worse = air.isDoubted() ? air : rh.isDoubted() ? rh : air;
        Members told = new Members().put("id", site.sensors().get(at).id()).put("place", Believed.place(site, at));
        if (said.airC() instanceof Reading.Value airC) {
            String humidity = said.rhPercent() instanceof Reading.Value percent
                    ? String.format(Locale.ROOT, ", %.0f %%", percent.value())
                    : "";
            told.put("what", site.degrees().text(airC.value()) + humidity).number("ageS", airC.ageS(), 0);
        }
        String what = worse == air ? "its temperature " : "its humidity ";
        return told.put("trust", trust(worse)).put("why", what + worse.says()).map();
    }

    private static String trust(Verdict verdict) {
        return switch (verdict) {
            case TRUSTED, NOT_FITTED -> "believed";
            case LOST, TOO_OLD -> "lost";
            case AT_ODDS, OUT_OF_RANGE, TOO_FAST, FROZEN, DISAGREES -> "doubted";
        };
    }

    // ---- machines

    private List<Object> machines() {
        List<Object> all = new ArrayList<>();
        for (int i = 0; i < site.machines().size(); i++) {
            Machine machine = site.machines().get(i);
            all.add(new Members()
                    .put("id", machine.id())
                    .word("role", machine.role())
                    .number("ratedW", machine.ratedW(), 0)
                    .put("closed", outcome.guarded().closed().has(i))
                    .word("seen", outcome.deliveries().of(i))
                    .put("starts24h", day.starts(i))
                    .number("hours24h", day.hours(i), 2)
                    .number("restS", restS(i, machine), 0)
                    .put("why", outcome.guarded().reasons().get(i).sentence(site.degrees()))
                    .map());
        }
        return all;
    }

    /** How long it must rest yet before it may start. */
    private double restS(int at, Machine machine) {
        GuardState next = outcome.guarded().next();
        if (outcome.guarded().closed().has(at)) {
            return 0;
        }
        double restedS = next.clocks().get(at).sinceSwitchS();
        double sinceStartS = next.clocks().get(at).sinceStartS();
        double spacingS = 3600.0 / machine.maxStartsPerH();
        return StrictMath.max(0, StrictMath.max(machine.minRestS() - restedS, spacingS - sinceStartS));
    }

    // ---- the tank

    private Map<String, Object> tank(Drying.Dryer dryer) {
        Members tank = new Members();
        if (outcome.judgement().tankFull()) {
            tank.number("litres", dryer.tankL(), 1);
        } else {
            ranS().ifPresent(ranS ->
                    tank.number("litres", StrictMath.min(dryer.tankL(), ranS * dryer.collectionLPerH() / 3600), 1));
        }
        tank.number("capacityLitres", dryer.tankL(), 1);
        NightPlan plan = sight.coming();
        if (plan != null && plan.tank() instanceof Tank.FullAt full) {
            tank.put("fullAtEpochS", full.epochS());
        }
        return tank.put(
                        "why",
                        outcome.judgement().tankFull()
                                ? "The float says that it is full."
                                : "Reckoned from the dryer's running time since the tank was emptied: rather too much.")
                .map();
    }

    /** How long the dryer has run since the tank was emptied, as the alert board counts it. */
    private Optional<Double> ranS() {
        SavedState saved = sight.saved();
        return saved == null
                ? Optional.empty()
                : saved.alerts().stream()
                        .filter(slot -> slot.kind() == AlertKind.TANK_NEARLY_FULL)
                        .map(AlertSlot::sumS)
                        .findFirst();
    }
}
