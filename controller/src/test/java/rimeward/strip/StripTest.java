package rimeward.strip;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;

final class StripTest {
    private static final long MIDNIGHT_S = 1_767_740_400; // Wed 7 Jan 2026 00:00 at +01:00
    private static final Span NIGHT = new Span(MIDNIGHT_S - 6 * 3600, MIDNIGHT_S + 6 * 3600, ZoneOffset.ofHours(1));

    @Test
    void timesAreThoseOfThePlace() {
        assertThat(Stamp.date(MIDNIGHT_S, ZoneOffset.ofHours(1))).isEqualTo("Wed 7 Jan 2026");
        assertThat(Stamp.clock(MIDNIGHT_S - 1, ZoneOffset.ofHours(1))).isEqualTo("23:59");
        assertThat(Stamp.iso(MIDNIGHT_S, ZoneOffset.ofHours(1))).isEqualTo("2026-01-07T00:00:00+01:00");
    }

    @Test
    void rulesStandOnWholeHoursOfThePlaceEvenWhereItsOffsetIsOdd() {
        Span odd = new Span(0, 86_400, ZoneOffset.ofHoursMinutes(5, 45));
        assertThat(Stamp.clock(odd.firstRuleS(3600), odd.offset())).isEqualTo("06:00");
        Span west = new Span(0, 86_400, ZoneOffset.ofHoursMinutes(-3, -30));
        assertThat(Stamp.clock(west.firstRuleS(21_600), west.offset())).isEqualTo("00:00");
    }

    @Test
    void midnightIsInTheMiddleOfTheNight() {
        assertThat(NIGHT.column(MIDNIGHT_S)).isEqualTo(Span.COLUMNS / 2);
        assertThat(NIGHT.percent(MIDNIGHT_S)).isEqualTo("50.00%");
        assertThat(NIGHT.column(0)).isZero();
    }

    @Test
    void aScaleHoldsItsValuesOnWholeRules() {
        Scale scale = Scale.around(-7.3, 11.2, 280);
        assertThat(scale.low()).isEqualTo(-8);
        assertThat(scale.high()).isEqualTo(12);
        assertThat(scale.label() % scale.rule()).isZero();
        assertThat(Scale.around(5, 5, 100).high()).isGreaterThan(5);
    }

    @Test
    void theShortestGapShows() {
        DutyRow row = new DutyRow(
                "warm duty",
                List.of(new DutyRow.Line("heater", "heater", List.of(new Spell(MIDNIGHT_S, MIDNIGHT_S + 1)))),
                List.of(),
                List.of(new Spell(MIDNIGHT_S, MIDNIGHT_S + 5)),
                "");
        Markup to = new Markup();
        row.paper(NIGHT, to);
        assertThat(to.done()).contains("M1000 0h1v1H1000z").contains("class=\"gap\" x=\"50.00%\"");
    }

    @Test
    void flagsNeverCoverEachOther() {
        List<Mark> crowd = List.of(
                new Mark(MIDNIGHT_S, "F1", "fault", "the heater's fuse is blown"),
                new Mark(MIDNIGHT_S + 60, "A1", "alert", "Heat is not arriving"),
                new Mark(MIDNIGHT_S + 6 * 3600, "A2", "alert", "Too late for words to the right"));
        Markup to = new Markup();
        MarkRow row = MarkRow.of(NIGHT, crowd);
        row.paper(NIGHT, to);
        assertThat(row.heightPx()).isEqualTo(2 * 17 + 4);
        assertThat(to.done()).contains("y=\"13\"", "y=\"30\"").contains("text-anchor=\"end\"><tspan class=\"code\">A2");
    }

    @Test
    void machineThatIsAskedButDrawsNothingGetsALineAndNoBar() {
        Markup to = new Markup();
        new LaneRow("heater", "heater", 1000, constant(0), constant(1), "").paper(NIGHT, to);
        assertThat(to.done()).contains("class=\"asked\" d=\"M0 32l2000 0\"").contains("d=\"M0 64l2000 0\"");
    }

    @Test
    void textIsEscapedAndControlCharactersAreShown() {
        Markup to = new Markup();
        to.put("b", "<&\"'>\u0000\u001B", "title", "\"><script>");
        assertThat(to.done())
                .isEqualTo("<b title=\"&quot;&gt;&lt;script&gt;\">&lt;&amp;&quot;&#39;&gt;\uFFFD\uFFFD</b>");
    }

    private static Series constant(double value) {
        return new Series() {
            @Override
            public int rows() {
                return 1;
            }

            @Override
            public long epochS(int row) {
                return NIGHT.startS();
            }

            @Override
            public double value(int row) {
                return value;
            }
        };
    }
}
