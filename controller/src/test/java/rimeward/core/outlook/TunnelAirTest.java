package rimeward.core.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import rimeward.core.tunnel.Figure;

final class TunnelAirTest {
    private static final World WORLD = World.likeliest(Evenings.known());

    private static TunnelAir air(double airC, double massC, double stepS) {
        return new TunnelAir(WORLD, 55, 97_000, stepS, airC, massC);
    }

    @Test
    void whatIsGivenIsLostOrStored() {
        TunnelAir air = air(9, 7, 300);
        air.setRh(80);
        double givenJ = 0;
        for (int step = 0; step < 144; step++) {
            double heatW = step % 7 * 300;
            double outsideC = -3 - step * 0.05;
            air.step(outsideC, 0.003, heatW, 0);
            givenJ += 300 * (heatW - 110 * (air.airC() - outsideC));
        }
        double storedJ = 150_000 * (air.airC() - 9) + 8e6 * (air.massC() - 7);
        assertThat(givenJ).isCloseTo(storedJ, within(1e-6 * 1e8));
    }

    /** checks.md: two nodes, decay; C 2e5/5e6 J/K, G12 150, G1 100, outside 0, both 10. Five-minute steps cost some hundredths. */
    @Test
    void twoNodesDecayAsTheFormulaSays() {
        World world = new World(List.of(100.0, 150.0, 2e5, 5e6, 0.0, 1.0, 1.3, 0.03, 0.03), 0, 0, 0);
        TunnelAir air = new TunnelAir(world, 40, 101_325, 300, 10, 10);
        air.setRh(50);
        for (int step = 1; step <= 144; step++) {
            air.step(0, 0.002, 0, 0);
            if (step == 12) {
                assertThat(air.airC()).isCloseTo(5.8999, within(0.05));
                assertThat(air.massC()).isCloseTo(9.6724, within(0.05));
            }
        }
        assertThat(air.airC()).isCloseTo(3.6681, within(0.05));
        assertThat(air.massC()).isCloseTo(6.0556, within(0.05));
    }

    @Test
    void theHeatAskedForBringsTheAirThere() {
        TunnelAir air = air(5, 8, 300);
        air.setRh(50);
        air.step(-4, 0.002, air.heatToReachW(6.5, -4), 0);
        assertThat(air.airC()).isCloseTo(6.5, within(1e-12));
    }

    @Test
    void dampSettlesWhereWettingAndExchangeBalance() {
        TunnelAir air = air(6, 6, 300);
        TunnelAir balanced = air(6, 6, 300);
        air.setRh(40);
        balanced.setDampInBalance(0.003);
        for (int step = 0; step < 100; step++) {
            air.step(6, 0.003, 0, 0);
        }
        assertThat(air.humidityKgPerKg()).isCloseTo(balanced.humidityKgPerKg(), within(1e-6));
        air.setRh(100);
        assertThat(air.dewPointC()).isCloseTo(air.airC(), within(0.01));
    }

    @Test
    void theNormalDistributionIsRight() {
        assertThat(Below.normal(0)).isCloseTo(0.5, within(1e-8));
        assertThat(Below.normal(1.959964)).isCloseTo(0.975, within(1e-6));
        assertThat(Below.normal(-1.644854)).isCloseTo(0.05, within(1e-6));
        assertThat(Below.zero(new Figure(3, 0))).isZero();
        assertThat(Below.zero(new Figure(-3, 0))).isEqualTo(1);
        assertThat(Helps.wantedSpreads(0.05)).isCloseTo(1.644854, within(1e-4));
    }
}
