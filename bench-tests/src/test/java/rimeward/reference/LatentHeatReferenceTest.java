package rimeward.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import rimeward.air.Latent;

/** Source: 2501 − 2.361 t kJ/kg (from memory). What a litre taken from the air at 5 °C gives back as heat. */
class LatentHeatReferenceTest {

    private static final double J_PER_KWH = 3.6e6;

    @Test
    void heatOfAKilogramAtFiveDegrees() {
        assertThat(Latent.vaporisationJPerKg(5) / J_PER_KWH).isCloseTo(0.6914, withinPercentage(0.1));
    }
}
