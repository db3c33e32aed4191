package rimeward.sim.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class ParametersTest {

    @Test
    void refusalsNameTheValueAndItsLimits() {
        assertThatThrownBy(() -> new DialParameters(60, 2, 180))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("opensC of the dial is 60.0; it must lie between -5.0 and 40.0");
    }

    @Test
    void notANumberIsRefused() {
        assertThatThrownBy(() -> new Panel(CoverKind.GLASS, Double.NaN)).hasMessageContaining("NaN");
    }

    @Test
    void aHeaterNeedsAStage() {
        assertThatThrownBy(() -> Defaults.heater(List.of(), new DialParameters(9, 2, 180)))
                .hasMessageContaining("at least one stage");
    }

    @Test
    void anUnknownBenchIsAnsweredWithTheKnownOnes() {
        assertThatThrownBy(() -> Defaults.tunnel().bench("attic"))
                .hasMessageContaining("attic")
                .hasMessageContaining("north bench");
        assertThat(Defaults.tunnel().bench("north bench")).isEqualTo(2);
    }

    @Test
    void everyCoverHasSomeResistanceOfItsOwn() {
        for (CoverKind kind : CoverKind.values()) {
            assertThat(kind.resistanceM2KPerW()).as(kind.name()).isPositive();
            assertThat(kind.wetLongWaveShare()).as(kind.name()).isLessThanOrEqualTo(kind.dryLongWaveShare());
        }
    }

    @Test
    void winklersCurvesAreOneAtTheRatingPointAndStopAtTheirEdges() {
        assertThat(WinklerCurves.waterShare(26.7, 60)).isCloseTo(1, within(0.02));
        assertThat(WinklerCurves.efficiencyShare(26.7, 60)).isCloseTo(1, within(0.02));
        assertThat(WinklerCurves.waterShare(-20, 80)).isEqualTo(WinklerCurves.waterShare(2, 80));
        assertThat(WinklerCurves.waterShare(2, 5)).isNotNegative();
    }
}
