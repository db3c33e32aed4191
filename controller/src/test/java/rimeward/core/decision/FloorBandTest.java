package rimeward.core.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import rimeward.core.judgement.Inside;
import rimeward.core.tunnel.TunnelModel;
import rimeward.fixture.Beliefs;
import rimeward.fixture.Sites;
import rimeward.site.Site;

class FloorBandTest {
    private final Site site = Sites.metered();
    private final TunnelModel tunnel = TunnelModel.assumed(site);

    private FloorBand at(double coldestC, double slopeKPerS) {
        return FloorBand.of(site, tunnel, Beliefs.seen(coldestC, slopeKPerS));
    }

    @Test
    void inStillAirTheBandIsWhatTheSettingsSay() {
        assertThat(at(6, 0)).isEqualTo(new FloorBand(4.7, 5.7, 6, 6));
    }

    @Test
    void movingAirIsJudgedByWhereItWillBeAfterTheDeadTimeAndItsSlopeIsOldAlready() {
        double timeConstantS = tunnel.airTimeConstantS();
        double changeK = 0.01 * timeConstantS * (1 - StrictMath.exp(-(120 + 45) / timeConstantS));
        assertThat(changeK).as("the case is worth testing").isGreaterThan(0.8);
        assertThat(at(6, -0.01).aheadC()).isCloseTo(6 - changeK, within(0.01));
        assertThat(at(6, 0.01).aheadC()).isCloseTo(6 + changeK, within(0.01));
    }

    private FloorBand of(Inside.Bench... benches) {
        double coldestC = Double.POSITIVE_INFINITY;
        for (Inside.Bench bench : benches) {
            coldestC = StrictMath.min(coldestC, bench.lowestC());
        }
        return FloorBand.of(site, tunnel, new Inside.Seen(coldestC, coldestC + 1, coldestC + 3, 0, List.of(benches)));
    }

    @Test
    void aWarmBenchThatFallsFastDoesNotPullTheColdestDown() {
        FloorBand band = of(new Inside.Bench(5.5, 0), new Inside.Bench(9, -0.01));
        assertThat(band.aheadC()).isEqualTo(5.5);
        assertThat(band.isFalling()).isFalse();
    }

    @Test
    void theBenchThatWillBeTheColdestCounts() {
        FloorBand band = of(new Inside.Bench(5.5, 1e-3), new Inside.Bench(5.6, -0.01));
        assertThat(band.coldestC()).isEqualTo(5.5);
        assertThat(band.aheadC()).isEqualTo(at(5.6, -0.01).aheadC());
        assertThat(band.isFalling()).isTrue();
    }

    @Test
    void noRateLeadsFartherThanFourKelvin() {
        assertThat(at(6, -1).aheadC()).isEqualTo(2);
        assertThat(at(6, 1).aheadC()).isEqualTo(10);
    }

    @Test
    void needIsLatchedBetweenTheLimits() {
        assertThat(at(4.7, 0).needed(false)).isTrue();
        assertThat(at(4.71, 0).needed(false)).isFalse();
        assertThat(at(5.69, 0).needed(true)).isTrue();
        assertThat(at(5.7, 0).needed(true)).isFalse();
    }

    @Test
    void aFallIsMetEarlyAndARiseLeftEarly() {
        assertThat(at(5.5, -0.01).needed(false)).isTrue();
        assertThat(at(5.0, 0.01).needed(true)).isFalse();
        assertThat(at(4.6, 0.1).needed(true))
                .as("but not while it is still below the lower limit")
                .isTrue();
    }
}
