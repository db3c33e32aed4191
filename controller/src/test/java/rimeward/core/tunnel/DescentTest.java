package rimeward.core.tunnel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class DescentTest {
    /** Rosenbrock's curved valley (The Computer Journal 3, 1960), lowest at (1, 1), from its usual start. */
    @Test
    void followsACurvedValleyToItsEnd() {
        double[] found = Descent.lowest(
                at -> 100 * StrictMath.pow(at[1] - at[0] * at[0], 2) + StrictMath.pow(1 - at[0], 2),
                new double[] {-1.2, 1},
                5,
                1e-12);
        assertThat(found[0]).isCloseTo(1, within(1e-3));
        assertThat(found[1]).isCloseTo(1, within(2e-3));
    }

    @Test
    void goesNoFartherThanItsReach() {
        double[] found = Descent.lowest(at -> -at[0], new double[] {0}, 2, 1e-9);
        assertThat(found[0]).isBetween(1.999, 2.0);
    }

    @Test
    void staysWhereEverythingElseIsNoNumber() {
        double[] found = Descent.lowest(at -> at[0] == 0 ? 0 : Double.NaN, new double[] {0}, 2, 1e-9);
        assertThat(found).containsExactly(0);
    }
}
