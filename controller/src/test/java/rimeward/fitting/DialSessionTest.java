package rimeward.fitting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import rimeward.fixture.Sites;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/** Floor 4 °C, margin 0.7 K, hot limit 28 °C; the first stage hangs behind the dial. */
class DialSessionTest {
    private static final RelaySet ALONE = RelaySet.of(0b0001);
    private static final RelaySet HELPED = RelaySet.of(0b0011);

    @Test
    void withAMeterAMarksDegreesAreItsThermostats() {
        SmallTunnel tunnel =
                new SmallTunnel(Sites.metered(), 8, 2).dial(10, 11.5).types("III", "");
        Mark mark = only(session(Sites.metered(), tunnel).run());
        assertThat(mark.swings()).isEqualTo(3);
        assertThat(mark.ending()).isEmpty();
        assertThat(mark.onC()).allSatisfy(onC -> assertThat(onC).isCloseTo(10, within(0.05)));
        assertThat(mark.offC()).allSatisfy(offC -> assertThat(offC).isCloseTo(11.5, within(0.05)));
        assertThat(DialTable.of(List.of(mark))).contains("III            10.0 °C   11.5 °C       3  by the meter\n");
    }

    @Test
    void theRelaysOwnClosingIsNoSwitchingOfTheThermostat() {
        SmallTunnel tunnel =
                new SmallTunnel(Sites.metered(), 8, 2).dial(10, 11.5).types("III", "");
        tunnel.close(RelaySet.none());
        Mark mark = only(session(Sites.metered(), tunnel).run());
        assertThat(mark.onC()).allSatisfy(onC -> assertThat(onC).isCloseTo(10, within(0.05)));
    }

    @Test
    void withoutAMeterTheAirsTurningPointsTell() {
        SmallTunnel tunnel =
                new SmallTunnel(Sites.unmetered(), 8, 2).dial(10, 11.5).types("III", "");
        tunnel.metered = false;
        Mark mark = only(session(Sites.unmetered(), tunnel).run());
        assertThat(mark.swings()).isEqualTo(3);
        assertThat(mark.onC()).allSatisfy(onC -> assertThat(onC).isCloseTo(10, within(0.05)));
        assertThat(mark.offC()).allSatisfy(offC -> assertThat(offC).isCloseTo(11.5, within(0.05)));
        assertThat(mark.how()).startsWith("by the air");
    }

    @Test
    void aMarkThatDoesNotHoldTheFloorIsHelpedAndTold() {
        SmallTunnel tunnel = new SmallTunnel(Sites.metered(), 8, -8).dial(1, 3).types("I", "");
        Mark mark = only(session(Sites.metered(), tunnel).run());
        assertThat(mark.ending()).contains("does not hold the floor");
        assertThat(mark.onC()).isEmpty();
        assertThat(tunnel.switched()).contains(HELPED);
        assertThat(tunnel.coldestC).isGreaterThan(4);
        assertThat(tunnel.closed()).isEqualTo(Sites.metered().stopState());
    }

    @Test
    void whereNoOtherStageFitsTheCircuitTheTrialEnds() {
        Site tight = Sites.limited(1060); // one stage, and the dryer's fan besides
        SmallTunnel tunnel = new SmallTunnel(tight, 8, -8).dial(1, 3).types("I", "");
        Mark mark = only(session(tight, tunnel).run());
        assertThat(mark.ending()).contains("does not hold the floor");
        assertThat(tunnel.switched()).doesNotContain(HELPED);
    }

    @Test
    void nothingHeatsAboveTheHotLimit() {
        SmallTunnel tunnel =
                new SmallTunnel(Sites.metered(), 20, 15).dial(32, 34).types("VI", "");
        Mark mark = only(session(Sites.metered(), tunnel).run());
        assertThat(mark.ending()).contains("hot limit");
        assertThat(tunnel.warmestC).isBetween(28.0, 28.1);
        assertThat(tunnel.closed()).isEqualTo(Sites.metered().stopState());
    }

    @Test
    void aMarkAboveWhatTheHeaterReachesIsGivenUp() {
        SmallTunnel tunnel =
                new SmallTunnel(Sites.metered(), 20, 5).dial(24, 26).types("V", "");
        Mark mark = only(session(Sites.metered(), tunnel).run());
        assertThat(mark.ending()).startsWith("nothing switched for 60 min");
        assertThat(mark.swings()).isZero();
    }

    @Test
    void withoutAReadingNoTrialGoesOn() {
        SmallTunnel tunnel =
                new SmallTunnel(Sites.metered(), 8, 2).dial(10, 11.5).types("III", "");
        tunnel.sensorsLost = true;
        assertThat(only(session(Sites.metered(), tunnel).run()).ending()).contains("gives no reading");
        assertThat(tunnel.nowS()).isLessThan(200);
    }

    @Test
    void marksFollowEachOtherAndTheHeaterIsAlone() {
        SmallTunnel tunnel =
                new SmallTunnel(Sites.metered(), 11, 2).dial(10, 11.5).types("III", "III again", "q");
        assertThat(session(Sites.metered(), tunnel).run())
                .extracting(Mark::name)
                .containsExactly("III", "III again");
        assertThat(tunnel.switched()).isSubsetOf(ALONE, Sites.metered().stopState());
    }

    @Test
    void theCsvNamesItsUnitsAndTheMedianIsTheMiddleOne() {
        Mark mark = new Mark("\"snow\"", List.of(4.0, 4.4, 9.0), List.of(6.0, 6.2), "by the meter", "");
        assertThat(DialTable.csv(List.of(mark)))
                .isEqualTo("mark,on_C,off_C,times_on,times_off,seen,ended\n"
                        + "\"\"\"snow\"\"\",4.4,6.1,3,2,\"by the meter\",\"\"\n");
    }

    private static DialSession session(Site site, SmallTunnel tunnel) {
        return new DialSession(site, tunnel, tunnel, tunnel, tunnel, new DialSession.Choice(0, 0, 3));
    }

    private static Mark only(List<Mark> marks) {
        assertThat(marks).hasSize(1);
        return marks.get(0);
    }
}
