package rimeward.sim.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import rimeward.sim.run.Comparison;
import rimeward.sim.run.SwitchEvent;

/** The files for other programs: their form, and that they say what the comparison says. */
class ResultFilesTest {
    private final Comparison comparison = ToyNight.comparison(24, true, "duty", "thermostat");

    @Test
    void theTraceHasARowForEachOfItsRowsUnderOneHeader() throws IOException {
        StringBuilder out = new StringBuilder();
        TraceCsv.write(comparison, out);
        List<String> lines = out.toString().lines().toList();
        int rows = comparison.results().stream().mapToInt(r -> r.trace().rows()).sum();
        assertThat(lines).hasSize(1 + rows);
        assertThat(lines.get(0))
                .startsWith("timeUtc,law,outsideC,outsideRhPercent,")
                .endsWith("gap,doorOpen");
        assertThat(lines.get(1)).startsWith("2026-01-06T15:00:00Z,duty,");
        int columns = lines.get(0).split(",", -1).length;
        assertThat(lines).allMatch(line -> line.split(",", -1).length == columns);
        assertThat(out).doesNotContain("\r").doesNotContain("NaN");
    }

    @Test
    void everySwitchIsListedWithItsReason() {
        List<String> lines = SwitchesCsv.of(comparison).lines().toList();
        List<SwitchEvent> switches = comparison.results().stream()
                .flatMap(r -> r.switches().stream())
                .toList();
        assertThat(lines).hasSize(1 + switches.size());
        assertThat(lines.get(0)).isEqualTo("timeUtc,law,machine,change,byGuard,reason");
        assertThat(lines.get(1)).endsWith(",\"" + switches.get(0).sentence() + "\"");
    }

    @Test
    void theSummaryTellsEachLawsNumbersAndWhatWasBroken() {
        String json = SummaryJson.of(comparison);
        assertThat(json)
                .startsWith("{\n  \"scenario\": {\n    \"id\": \"toy\",")
                .endsWith("}\n")
                .contains("\"law\": \"duty\"", "\"law\": \"thermostat\"", "\"floorC\": 4.00", "\"gatesPassed\": true")
                .contains("\"text\": \"the fuse of heater-1 is blown\"");
        assertThat(json.chars().filter(c -> c == '{').count())
                .isEqualTo(json.chars().filter(c -> c == '}').count());
    }

    @Test
    void textIsEscaped() {
        Json json = new Json();
        json.object(() -> json.member("a \"quoted\" \\ name", "two\nlines\t°C"));
        assertThat(json.toString()).isEqualTo("{\n  \"a \\\"quoted\\\" \\\\ name\": \"two\\u000alines\\u0009°C\"\n}\n");
    }

    @Test
    void emptyListsStayOnOneLine() {
        Json json = new Json();
        json.object(() -> json.name("none").array(() -> {}).member("more", 1));
        assertThat(json.toString()).isEqualTo("{\n  \"none\": [],\n  \"more\": 1\n}\n");
    }
}
