package rimeward.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import rimeward.sim.physics.CoverKind;
import rimeward.sim.physics.Panel;
import rimeward.sim.physics.WinklerCurves;

/** Cover and dryer against published numbers. */
class MachinesReferenceTest {
    private static final double M2_PER_FT2 = 0.09290304; // exact, by the international foot

    @Test
    void lossOfAFilmHouse() {
        // A structure maker's worked example: 352 ft² at 0.53 and 3456 ft² at 0.7 Btu/(h ft² °F) → 1374.5 W/K.
        Panel ends = new Panel(CoverKind.TWIN_WALL, 352 * M2_PER_FT2);
        Panel roof = new Panel(CoverKind.DOUBLE_FILM, 3456 * M2_PER_FT2);
        assertThat(Panel.lossWPerK(List.of(ends, roof))).isCloseTo(1374.5, within(1374.5 * 1e-3));
    }

    @Test
    void compressorDryer() {
        // Winkler, Christensen & Tomerlin (NREL, 2011): the two fits, worked by hand at 10 °C and 80 %.
        assertThat(WinklerCurves.waterShare(10, 80)).isCloseTo(0.6017, within(1e-4));
        assertThat(WinklerCurves.efficiencyShare(10, 80)).isCloseTo(0.8880, within(1e-4));
    }
}
