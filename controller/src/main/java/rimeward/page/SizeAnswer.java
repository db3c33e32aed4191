package rimeward.page;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rimeward.json.JsonText;
import rimeward.record.Lowest;
import rimeward.record.Night;
import rimeward.site.Site;
import rimeward.sizing.Basis;
import rimeward.sizing.Input;
import rimeward.sizing.Inputs;
import rimeward.sizing.Naming;
import rimeward.sizing.Question;
import rimeward.sizing.Refused;
import rimeward.sizing.Sheet;
import rimeward.sizing.Winter;

/** The heat-loss sheet of a tunnel whose dimensions are asked with: floor, circuit and prices are the settings', nights the record's. */
public final class SizeAnswer {
    private static final List<String> WORDS = List.of("cover", "ends", "insulation");

    private final Site site;
    private final Map<String, String> asked;
    private final Inputs inputs = new Inputs(Naming.FIELDS);

    private SizeAnswer(Site site, Map<String, String> asked) {
        this.site = site;
        this.asked = asked;
    }

    /**
     * As {@link SizeJson} has it.
     *
     * @param asked by the inputs' keys and {@code cover}, {@code ends}, {@code insulation}
     * @param nights of the record
     * @throws Refused with every fault
     */
    public static String json(Site site, Map<String, String> asked, List<Night> nights) throws Refused {
        return JsonText.of(SizeJson.map(new SizeAnswer(site, asked).sheet(nights)));
    }

    private Sheet sheet(List<Night> nights) throws Refused {
        asked.keySet().stream()
                .filter(key -> !WORDS.contains(key)
                        && Arrays.stream(Input.values())
                                .noneMatch(input -> input.key().equals(key)))
                .forEach(key -> inputs.refuse("\"" + key + "\" is nothing that a sheet rests on; leave it out"));
        for (Input input : Input.values()) {
            inputs.given(input, asked.get(input.key()));
        }
        coldest(nights);
        Question sheet = new Question(inputs);
        sheet.settings(site, "settings");
        recorded(nights).ifPresent(sheet::recorded);
        String done = asked.getOrDefault("insulation", "");
        return sheet.sheet(
                asked.get("cover"), asked.get("ends"), done.isEmpty() ? List.of() : List.of(done.split(",")), null);
    }

    /** A winter that was seen to be colder than what is assumed of winters goes before that. */
    private void coldest(List<Night> nights) {
        double assumedC = Input.OUTSIDE.usual().orElseThrow().value();
        nights.stream()
                .map(Night::outside)
                .filter(Lowest.Seen.class::isInstance)
                .map(seen -> ((Lowest.Seen) seen).airC())
                .min(Double::compare)
                .filter(lowestC -> lowestC < assumedC)
                .ifPresent(
                        lowestC -> inputs.say(Input.OUTSIDE, lowestC, Basis.WEATHER, "coldest of the nights recorded"));
    }

    /** What the heaters took; each night's money is shared out by kWh. */
    private Optional<Winter.Recorded> recorded(List<Night> nights) {
        List<String> ids = site.machineIds();
        double kWh = 0;
        double money = 0;
        for (Night night : nights) {
            double heatersKWh = night.machines().stream()
                    .filter(use -> site.heaterStages().has(ids.indexOf(use.machine())))
                    .mapToDouble(Night.Use::kWh)
                    .sum();
            kWh += heatersKWh;
            money += heatersKWh > 0 ? night.cost() * heatersKWh / night.kWh() : 0;
        }
        return kWh > 0 ? Optional.of(new Winter.Recorded(nights.size(), kWh, money)) : Optional.empty();
    }
}
