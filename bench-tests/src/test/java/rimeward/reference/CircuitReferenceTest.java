package rimeward.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import rimeward.site.Circuit;

/** Sources, both from memory: BS 1363, a plug's fuse of 13 A at 230 V; the NEC, which loads a circuit for hours with 80 % at most. */
class CircuitReferenceTest {

    @Test
    void aPlugOfThirteenAmperes() {
        assertThat(new Circuit(230, 13, 1, 0, 0).limitW()).isCloseTo(2990, within(1e-9));
    }

    @Test
    void continuousLoad() {
        assertThat(new Circuit(230, 13, 0.8, 0, 0).limitW()).isCloseTo(2392, within(1e-9));
    }
}
