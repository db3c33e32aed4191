package rimeward.sim.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class CompressorDryerTest {

    private static Night running() {
        Night night = Night.with(Defaults.compressorDryer());
        night.tunnel.dryer().contact(true);
        return night;
    }

    @Test
    void inColdAirItIcesAndDefrosts() {
        Night night = running();
        night.until(() -> night.tunnel.dryer().phase() == DryerPhase.DEFROST);
        assertThat(night.tunnel.coilIceKg()).isCloseTo(0.4, within(0.01));
        double tankKg = night.tunnel.tankKg();
        double tookS = night.until(() -> night.tunnel.dryer().phase() != DryerPhase.DEFROST);
        assertThat(tookS).isBetween(500.0, 700.0);
        assertThat(night.tunnel.tankKg()).isGreaterThan(tankKg + 0.35);
    }

    @Test
    void inWarmAirNothingFreezes() {
        Night night = Night.with(Defaults.compressorDryer(), new StartState(20, 20, 80, 150, 0));
        night.weather(18, 80, 1, 16);
        night.tunnel.dryer().contact(true);
        night.hours(2);
        assertThat(night.tunnel.coilIceKg()).isZero();
        assertThat(night.tunnel.tankKg()).isCloseTo(night.tunnel.collectedKg(), within(1e-9));
    }

    @Test
    void itRestsBeforeItStartsAgain() {
        Night night = running().hours(0.5);
        night.tunnel.dryer().contact(false);
        night.seconds(10);
        night.tunnel.dryer().contact(true);
        double restedS = night.until(() -> night.tunnel.dryer().phase() == DryerPhase.RUNNING);
        assertThat(restedS).isBetween(165.0, 180.0);
    }

    @Test
    void iceLeftOnAStoppedCoilMeltsIntoTheTank() {
        Night night = running().hours(1);
        double iceKg = night.tunnel.coilIceKg();
        double tankKg = night.tunnel.tankKg();
        night.tunnel.dryer().contact(false);
        night.hours(3);
        assertThat(night.tunnel.coilIceKg()).isLessThan(0.2 * iceKg);
        assertThat(night.tunnel.tankKg()).isGreaterThan(tankKg + 0.8 * iceKg);
    }

    @Test
    void itCollectsLessInTheColdThanAtItsRating() {
        Night cold = running().hours(1);
        Night warm = Night.with(Defaults.compressorDryer(), new StartState(26, 26, 75, 150, 0));
        warm.weather(26, 75, 1, 24);
        warm.tunnel.dryer().contact(true);
        warm.hours(1);
        assertThat(cold.tunnel.collectedKg()).isLessThan(0.6 * warm.tunnel.collectedKg());
    }
}
