package rimeward.core.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import rimeward.core.tunnel.TunnelEstimate;
import rimeward.fixture.Sites;
import rimeward.site.Site;

final class AlternativesTest {
    private static final Site SITE = Sites.metered();

    private static Alternatives planned(double outsideC) {
        return Alternatives.planned(
                SITE, Evenings.doubtful(10), Evenings.level(outsideC, 1), Evenings.start(6), Evenings.exact());
    }

    private static Alternative of(Alternatives all, Alternative.Way way) {
        return all.all().stream().filter(each -> each.way() == way).findFirst().orElseThrow();
    }

    @Test
    void aDialSetHighWastesAndTheDryerAloneLetsItFreeze() {
        Alternatives all = planned(-6);
        Alternative byHand = of(all, Alternative.Way.BY_HAND);
        assertThat(byHand.savedKWh().value()).isPositive();
        assertThat(byHand.saved()).matches("\\d+\\.\\d kWh less than the heater on its dial");
        assertThat(byHand.lowestBenchC().value()).isGreaterThan(SITE.floorC());
        Alternative dryer = of(all, Alternative.Way.DRYER_ALONE);
        assertThat(dryer.lowestBenchC().value()).isLessThan(SITE.floorC());
        assertThat(dryer.coldSentence(SITE, false)).contains("below the floor").contains("give or take");
        assertThat(dryer.saved()).contains(" more than ");
    }

    @Test
    void aThermostatKnowsNothingOfTheColdCorner() {
        Alternatives all = Alternatives.planned(
                SITE,
                Evenings.known(),
                Evenings.level(-6, 1),
                Evenings.start(6),
                Evenings.exact().withCorner(2));
        assertThat(of(all, Alternative.Way.THERMOSTAT).lowestBenchC().value())
                .isCloseTo(SITE.floorC() + 1 - 2, within(0.05));
    }

    @Test
    void whatBothGetWrongAlikeDoesNotBlurTheSaving() {
        Alternative byHand = of(planned(-6), Alternative.Way.BY_HAND);
        assertThat(byHand.savedKWh().standardError()).isLessThan(byHand.kWh().standardError());
    }

    @Test
    void aNightThatWasIsComparedWithWhatWasTaken() {
        Alternatives past = Alternatives.past(
                SITE, Evenings.known(), Evenings.level(-6, 0), Evenings.start(6), Evenings.exact(), 10, 3);
        Alternative byHand = of(past, Alternative.Way.BY_HAND);
        assertThat(byHand.savedKWh().value()).isCloseTo(byHand.kWh().value() - 10, within(1e-9));
        assertThat(byHand.costSentence(SITE, true)).contains("would have taken").contains("ours took");
    }

    @Test
    void anAssumedTunnelIsSaidToBeOne() {
        assertThat(String.join(" ", planned(-6).sentences(SITE))).contains("learned from 5 nights");
        Alternatives guess = Alternatives.planned(
                SITE, TunnelEstimate.assumed(SITE), Evenings.level(-6, 1), Evenings.start(6), Evenings.exact());
        assertThat(String.join(" ", guess.sentences(SITE))).contains("All this is a guess: the tunnel is assumed");
    }
}
