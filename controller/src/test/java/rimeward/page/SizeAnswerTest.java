package rimeward.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rimeward.adapter.config.SiteSettings;
import rimeward.json.Json;
import rimeward.json.JsonReader;
import rimeward.record.Lowest;
import rimeward.record.Night;
import rimeward.site.Site;
import rimeward.sizing.Refused;

class SizeAnswerTest {
    private static final Map<String, String> TUNNEL = Map.of(
            "width_m", "4", "length_m", "6", "height_m", "2.2", "cover", "bubble-lined-film", "ends", "twin-wall");

    private final Site site = SiteSettings.read(Path.of("..", "config", "tunnel.toml"));

    @Test
    void dimensionsAndSettingsMakeTheSheetOfTheCommand() throws Exception {
        Json sheet = sheet(TUNNEL, List.of());
        assertThat(number(sheet, "loss", "total_W_per_K")).isBetween(236.0, 237.0); // as README prints it
        assertThat(number(sheet, "heater", "held_C")).isEqualTo(5); // the settings' floor and half their band
        assertThat(sheet.get("currency")).contains(new Json.Text("GBP"));
        assertThat(sheet.get("recorded")).isEmpty();
    }

    @Test
    void aMeasureSavesItsShareOfWhatTheHeatersTook() throws Exception {
        Json sheet = sheet(TUNNEL, List.of(night("2026-01-10", -3), night("2026-01-11", -4)));
        assertThat(number(sheet, "recorded", "heat_kWh")).isEqualTo(40);
        assertThat(number(sheet, "recorded", "cost_money")).isEqualTo(8); // four fifths of two nights at 5 each
        Json sealed = measure(sheet, "sealed-gaps");
        double share = 1 - number(sealed, "loss_after_W_per_K") / number(sheet, "loss", "total_W_per_K");
        assertThat(number(sealed, "saved_kWh")).isCloseTo(40 * share, within(0.01));
        assertThat(number(sealed, "saved_money")).isCloseTo(8 * share, within(0.01));
    }

    @Test
    void aNightThatWasColderThanIsAssumedIsWhatTheHeaterIsFor() throws Exception {
        assertThat(number(sheet(TUNNEL, List.of(night("2026-01-10", -14.5))), "inputs", "outside_C", "value"))
                .isEqualTo(-14.5);
        assertThat(number(sheet(TUNNEL, List.of(night("2026-01-10", -2))), "inputs", "outside_C", "value"))
                .isEqualTo(-10);
        assertThat(number(
                        sheet(with(TUNNEL, "outside_C", "-6"), List.of(night("2026-01-10", -14.5))),
                        "inputs",
                        "outside_C",
                        "value"))
                .isEqualTo(-6);
    }

    @Test
    void everyFaultIsToldByTheNameOnTheForm() {
        assertThatThrownBy(() -> sheet(
                        Map.of(
                                "width_m",
                                "400",
                                "length_m",
                                "six",
                                "cover",
                                "straw",
                                "colour",
                                "red",
                                "insulation",
                                "hay"),
                        List.of()))
                .isInstanceOfSatisfying(
                        Refused.class,
                        e -> assertThat(e.faults())
                                .containsExactly(
                                        "\"colour\" is nothing that a sheet rests on; leave it out",
                                        "width (m) is 400 (given); it must lie between 1 and 30 m: measure from side to side on the ground",
                                        "length (m) is \"six\", which is no number; write digits with a point, as 4.5: measure from end to end",
                                        "cover is \"straw\"; it must be one of single-film, double-film, bubble-lined-film, twin-wall, glass",
                                        "insulation names \"hay\"; it knows bubble-lining, bubble-lined-ends, second-film, sealed-gaps,"
                                                + " edge-board, smaller-part, parted by commas"));
        assertThatThrownBy(() -> sheet(Map.of(), List.of()))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("width (m) is missing")
                .hasMessageContaining("length (m) is missing");
    }

    private static Night night(String evening, double outsideC) {
        return new Night(
                LocalDate.parse(evening),
                new Lowest.Seen(4.6),
                new Lowest.Seen(outsideC),
                86_400,
                0,
                List.of(
                        new Night.Use("heater-1", 12, 30),
                        new Night.Use("heater-2", 8, 10),
                        new Night.Use("dryer", 5, 2)),
                5,
                1,
                0);
    }

    private Json sheet(Map<String, String> asked, List<Night> nights) throws Exception {
        return JsonReader.read(SizeAnswer.json(site, asked, nights));
    }

    private static Map<String, String> with(Map<String, String> asked, String key, String value) {
        Map<String, String> more = new HashMap<>(asked);
        more.put(key, value);
        return more;
    }

    private static double number(Json from, String... path) {
        Json at = from;
        for (String name : path) {
            at = at.get(name).orElseThrow(() -> new AssertionError("no " + name));
        }
        return ((Json.Figure) at).value();
    }

    private static Json measure(Json sheet, String word) {
        return ((Json.Elements) sheet.get("measures").orElseThrow())
                .each().stream()
                        .filter(each -> each.get("insulation").equals(Optional.of(new Json.Text(word))))
                        .findFirst()
                        .orElseThrow();
    }
}
