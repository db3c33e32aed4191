package rimeward.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class LatentTest {

    @Test
    void sublimationIsEvaporationPlusFusionAtZero() {
        double fusionJPerKg = Latent.sublimationJPerKg(0) - Latent.vaporisationJPerKg(0);
        assertThat(fusionJPerKg).isCloseTo(333_550, within(1_000.0)); // heat of fusion of ice, from memory
    }

    @Test
    void vaporisationFallsWithTemperature() {
        assertThat(Latent.vaporisationJPerKg(0)).isEqualTo(2_501_000.0);
        assertThat(Latent.vaporisationJPerKg(20)).isCloseTo(2_453_780, within(1e-6));
    }
}
