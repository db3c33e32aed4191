package rimeward.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rimeward.sim.physics.CoverKind;
import rimeward.sim.physics.Defaults;
import rimeward.sim.physics.Panel;
import rimeward.site.Circuit;
import rimeward.sizing.Areas;
import rimeward.sizing.Cover;
import rimeward.sizing.HeaterPlan;
import rimeward.sizing.House;
import rimeward.sizing.Loss;
import rimeward.sizing.Stages;

/** The heat-loss sheet against a published example, the circuit figures, and the simulator. */
class SizingReferenceTest {
    private static final double M2_PER_FT2 = 0.3048 * 0.3048;

    @Test
    void aFilmHouse() {
        // A structure maker's worked example: 352 ft² at 0.53 and 3456 ft² at 0.7 Btu/(h ft² °F) → 1374.5 W/K.
        Areas areas = new Areas(3456 * M2_PER_FT2, 352 * M2_PER_FT2, 0, 0, 0);
        Loss loss = new House(areas, Cover.DOUBLE_FILM.lossWPerM2K(), Cover.TWIN_WALL.lossWPerM2K(), 0, 0, 0).loss();
        assertThat(loss.totalWPerK()).isCloseTo(1374.5, within(1374.5 * 1e-3));
    }

    @Test
    void aPlugForHoursOnEnd() {
        // BS 1363: 13 A × 230 V = 2990 W; NEC: 80 % of it for continuous loads, 2392 W. Both from memory.
        Circuit plug = new Circuit(230, 13, 0.8, 0, 0);
        assertThat(HeaterPlan.plugW(plug)).isCloseTo(2392, within(1e-9));
        assertThat(HeaterPlan.plugW(new Circuit(230, 13, 1, 0, 0))).isCloseTo(2990, within(1e-9));
        assertThat(HeaterPlan.of(2000, plug).fitting()).isEqualTo(new Stages.Some(List.of(1000.0, 1000.0)));
        assertThat(HeaterPlan.of(2393, plug).fits()).isFalse();
    }

    @Test
    void theSimulatorsCoversLoseTheSame() {
        assertThat(Stream.of(Cover.values()).map(Cover::name))
                .containsExactlyElementsOf(
                        Stream.of(CoverKind.values()).map(CoverKind::name).toList());
        for (Cover cover : Cover.values()) {
            assertThat(cover.lossWPerM2K())
                    .isEqualTo(CoverKind.valueOf(cover.name()).lossWPerM2K());
        }
    }

    @Test
    void theSimulatorsTunnelLosesTheSame() {
        List<Panel> cover = Defaults.tunnel().cover();
        Areas areas = new Areas(cover.get(0).areaM2(), cover.get(1).areaM2(), 24, 20, 41);
        Loss loss =
                new House(areas, Cover.BUBBLE_LINED_FILM.lossWPerM2K(), Cover.TWIN_WALL.lossWPerM2K(), 0, 0, 0).loss();
        assertThat(loss.totalWPerK()).isCloseTo(Panel.lossWPerK(cover), within(1e-9));
    }
}
