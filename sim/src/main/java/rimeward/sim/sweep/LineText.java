package rimeward.sim.sweep;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rimeward.json.Json;
import rimeward.json.JsonReader;
import rimeward.json.JsonText;
import rimeward.json.NoJson;
import rimeward.sim.scenario.BadInput;

/** A winter as one line of JSON, and back. */
final class LineText {
    private LineText() {}

    /** Without a line break. */
    static String of(WinterLine line) {
        Map<String, Object> members = new LinkedHashMap<>();
        members.put("seed", line.seed());
        members.put("weather", line.weather());
        members.put("cover", line.cover());
        members.put("dryer", line.dryer());
        members.put("troubles", line.troubles());
        members.put("laws", line.laws().stream().map(LineText::law).toList());
        members.put("broken", line.broken().stream().map(LineText::broken).toList());
        return JsonText.of(members);
    }

    private static Map<String, Object> law(LawLine law) {
        Map<String, Object> members = new LinkedHashMap<>();
        members.put("law", law.law());
        members.put("marginK", law.marginK());
        members.put("belowFloorMin", law.belowFloorMin());
        members.put("gapS", law.gapS());
        members.put("benchWetH", law.benchWetH());
        members.put("dampH", law.dampH());
        members.put("kWh", law.kWh());
        members.put("starts", law.starts());
        members.put("alerts", law.alerts());
        return members;
    }

    private static Map<String, Object> broken(Broken broken) {
        Map<String, Object> members = new LinkedHashMap<>();
        members.put("property", broken.code());
        members.put("firstEpochS", broken.firstEpochS());
        members.put("lastedS", broken.lastedS());
        members.put("text", broken.text());
        return members;
    }

    /** @throws BadInput where it is no such line */
    static WinterLine read(String line) throws BadInput {
        Json json = json(line);
        List<String> troubles = new ArrayList<>();
        for (Json each : elements(json, "troubles")) {
            troubles.add(each instanceof Json.Text said ? said.text() : "?");
        }
        List<LawLine> laws = new ArrayList<>();
        for (Json each : elements(json, "laws")) {
            laws.add(readLaw(each));
        }
        List<Broken> broken = new ArrayList<>();
        for (Json each : elements(json, "broken")) {
            broken.add(new Broken(
                    text(each, "property"),
                    (long) number(each, "firstEpochS"),
                    (long) number(each, "lastedS"),
                    text(each, "text")));
        }
        return new WinterLine(
                (long) number(json, "seed"),
                text(json, "weather"),
                text(json, "cover"),
                text(json, "dryer"),
                troubles,
                laws,
                broken);
    }

    private static Json json(String line) throws BadInput {
        try {
            return JsonReader.read(line);
        } catch (NoJson e) {
            throw new BadInput("the line is no winter's: " + e.why(), e);
        }
    }

    private static LawLine readLaw(Json json) throws BadInput {
        return new LawLine(
                text(json, "law"),
                number(json, "marginK"),
                number(json, "belowFloorMin"),
                number(json, "gapS"),
                number(json, "benchWetH"),
                number(json, "dampH"),
                number(json, "kWh"),
                number(json, "starts"),
                number(json, "alerts"));
    }

    private static List<Json> elements(Json json, String name) throws BadInput {
        if (json.get(name).orElse(json) instanceof Json.Elements elements) {
            return elements.each();
        }
        throw new BadInput("the line is no winter's: it has no list \"" + name + '"');
    }

    private static String text(Json json, String name) throws BadInput {
        if (json.get(name).orElse(json) instanceof Json.Text said) {
            return said.text();
        }
        throw new BadInput("the line is no winter's: it has no text \"" + name + '"');
    }

    private static double number(Json json, String name) throws BadInput {
        if (json.get(name).orElse(json) instanceof Json.Figure figure) {
            return figure.value();
        }
        throw new BadInput("the line is no winter's: it has no number \"" + name + '"');
    }
}
