package rimeward.sim.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import rimeward.sim.run.Comparison;
import rimeward.sim.run.FaultNote;
import rimeward.sim.run.ScenarioHeader;

/** What a person, a browser without a network and a screen reader find in the page. */
final class ReportPageTest {
    private final Comparison cold = ToyNight.comparison(48, true, "duty", "thermostat", "dryer-alone");
    private final String page = ReportPage.of(cold, "1.2.3");

    @Test
    void opensWithoutNetworkOrOtherFiles() {
        assertThat(page).doesNotContainPattern("https?:|//[a-z]|url\\(|@import|src=|href=|<link|<iframe|<img");
    }

    @Test
    void sameNightGivesSamePage() {
        assertThat(ReportPage.of(ToyNight.comparison(48, true, "duty", "thermostat", "dryer-alone"), "1.2.3"))
                .isEqualTo(page);
    }

    @Test
    void staysSmallForThreeDays() {
        Comparison three = ToyNight.comparison(72, true, "duty", "thermostat", "dryer-alone", "by-hand", "always-on");
        assertThat(ReportPage.of(three, "1").length()).isLessThan(500_000);
    }

    @Test
    void namesFromFilesAreTextAndNothingElse() {
        ScenarioHeader header = new ScenarioHeader(
                "x",
                "<script>alert(1)</script>",
                "\"quoted\" & 'ticked'",
                "</dl><img onerror=x>",
                cold.header().startEpochS(),
                cold.header().lengthS(),
                5,
                1,
                ToyNight.OFFSET,
                List.of(new FaultNote(
                        cold.header().startEpochS() + 60, cold.header().endEpochS(), "<b>fuse</b>")));
        String nasty = ReportPage.of(
                new Comparison(header, ToySite.named("Hallin <i> Rigg"), cold.results(), List.of()), "1<2");
        assertThat(nasty)
                .contains("&lt;script&gt;alert(1)&lt;/script&gt;", "&lt;b&gt;fuse&lt;/b&gt;", "Rimeward 1&lt;2")
                .doesNotContain("<script>alert", "<img", "<b>", "<i>");
        assertThat(tags(nasty, "script")).isEqualTo(1);
    }

    @Test
    void everyPanelHasWords() {
        List<String> papers = matches(page, "<svg class=\"paper\"[^>]*>");
        assertThat(papers)
                .isNotEmpty()
                .allMatch(svg -> svg.contains("aria-hidden=\"true\"") || svg.contains("role=\"img\" aria-label=\""));
        assertThat(page)
                .contains("aria-label=\"Temperatures. Outside from ")
                .contains("aria-label=\"Relative humidity from ")
                .contains("aria-label=\"Dew point from ")
                .contains("aria-label=\"Lane of heater-1: drew power for ")
                .contains("aria-label=\"Who held the warm duty. needed ")
                .contains("<summary>The same as a table</summary>");
    }

    @Test
    void bestAndWorstAreSaidNotOnlyDrawn() {
        assertThat(page).contains("<span class=\"unseen\"> best</span>", "<span class=\"unseen\"> worst</span>");
    }

    @Test
    void faultAndAlertStandOnTheStripBelowItAndInTheLog() {
        assertThat(matches(page, "F1</tspan><tspan class=\"wide\"> the fuse of heater-1 is blown"))
                .hasSize(1);
        assertThat(page)
                .contains("<dt>F1</dt><dd>the fuse of heater-1 is blown: Wed 7 Jan 02:00</dd>")
                .contains("<td>F1 begins</td><td>The fuse of heater-1 is blown.</td>")
                .contains("<td>A1 Heat is not arriving</td>");
    }

    @Test
    void everySwitchOfOurLawIsInTheLogWithItsReason() {
        assertThat(matches(page, "<tr class=\"switch\">"))
                .hasSize(cold.results().get(0).switches().size());
        String sentence = cold.results().get(0).switches().get(0).sentence();
        assertThat(page)
                .contains("<td>dryer on</td><td>" + sentence.substring(0, 1).toUpperCase(Locale.ROOT)
                        + sentence.substring(1) + ".</td>");
    }

    @Test
    void tagsAreBalanced() {
        for (String element : List.of("svg", "table", "tbody", "tr", "td", "section", "div", "figure", "dl", "ul")) {
            assertThat(tags(page, element))
                    .as(element)
                    .isEqualTo(matches(page, "</" + element + ">").size());
        }
    }

    private static int tags(String text, String element) {
        return matches(text, "<" + element + "[ >]").size();
    }

    private static List<String> matches(String text, String pattern) {
        return Pattern.compile(pattern)
                .matcher(text)
                .results()
                .map(MatchResult::group)
                .toList();
    }
}
