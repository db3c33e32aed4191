package rimeward.sim.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import rimeward.sim.run.Comparison;

final class TextTableTest {
    private final Comparison night = ToyNight.comparison(36, false, "duty", "thermostat", "dryer-alone", "by-hand");

    @Test
    void fitsATerminal() {
        assertThat(TextTable.of(night, false).lines()).allMatch(line -> line.length() <= 100);
    }

    @Test
    void manyLawsComeInBlocks() {
        Comparison many = ToyNight.comparison(
                3, false, "duty", "thermostat", "dryer-alone", "by-hand", "always-on", "somebody-elses-law-of-heat");
        List<String> lines = TextTable.of(many, false).lines().toList();
        assertThat(lines).allMatch(line -> line.length() <= 100);
        assertThat(lines).filteredOn(line -> line.startsWith("gap, s")).hasSize(2);
    }

    @Test
    void numbersStandUnderTheirLaw() {
        List<String> lines = TextTable.of(night, false).lines().toList();
        String lowest = lines.stream()
                .filter(l -> l.startsWith("lowest bench, °C"))
                .findFirst()
                .orElseThrow();
        int end = lines.get(0).indexOf("thermostat") + "thermostat".length();
        assertThat(lowest.substring(0, end)).matches(".*\\d\\.\\d");
        assertThat(lowest.charAt(end - 4)).isEqualTo(' ');
    }

    @Test
    void freezingCheaplyIsNotBest() {
        String cost = TextTable.of(night, false)
                .lines()
                .filter(l -> l.startsWith("cost"))
                .findFirst()
                .orElseThrow();
        String dryerAlone = cost.trim().split(" +")[4];
        assertThat(dryerAlone).doesNotContain("+").doesNotContain("-");
        assertThat(cost).contains("+");
    }

    @Test
    void colourOnlyWhereAskedFor() {
        assertThat(TextTable.of(night, false)).doesNotContain("\u001B");
        String coloured = TextTable.of(night, true);
        assertThat(coloured).contains("\u001B[32m+\u001B[0m");
        assertThat(coloured.replaceAll("\u001B\\[\\d+m", "")).isEqualTo(TextTable.of(night, false));
    }
}
