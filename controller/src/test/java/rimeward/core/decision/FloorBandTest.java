package rimeward.core.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import rimeward.core.tunnel.TunnelModel;
import rimeward.fixture.Beliefs;
import rimeward.fixture.Sites;
import rimeward.site.Site;

class FloorBandTest {
    private final Site site = Sites.metered();
    private final TunnelModel tunnel = TunnelModel.assumed(site.tunnel());

    private FloorBand at(double slopeKPerS) {
        return FloorBand.of(site, tunnel, Beliefs.seen(6, slopeKPerS));
    }

    @Test
    void inStillAirTheBandIsWhatTheSettingsSay() {
        assertThat(at(0)).isEqualTo(new FloorBand(4.7, 5.7));
        assertThat(at(0.01)).as("rising air needs no anticipation").isEqualTo(new FloorBand(4.7, 5.7));
    }

    @Test
    void fallingAirStartsHeatEarlierByWhatItWillLoseInTheDeadTime() {
        double timeConstantS = tunnel.airTimeConstantS();
        double lostK = 0.01 * timeConstantS * (1 - StrictMath.exp(-120 / timeConstantS));
        assertThat(lostK).as("the case is worth testing").isGreaterThan(0.8);
        assertThat(at(-0.01).onC()).isCloseTo(4 + lostK, within(0.01));
    }

    @Test
    void anticipationIsBounded() {
        assertThat(at(-1).onC()).isEqualTo(8);
    }

    @Test
    void needIsLatchedBetweenTheLimits() {
        FloorBand band = at(0);
        assertThat(band.needed(4.7, false)).isTrue();
        assertThat(band.needed(4.71, false)).isFalse();
        assertThat(band.needed(5.69, true)).isTrue();
        assertThat(band.needed(5.7, true)).isFalse();
    }
}
