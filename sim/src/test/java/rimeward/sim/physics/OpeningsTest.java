package rimeward.sim.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class OpeningsTest {

    private static Night heated() {
        Night night = Night.with(new DryerParameters.None()).weather(-3, 85, 3, -10);
        night.tunnel.heater().contact(0, true);
        return night.hours(3);
    }

    @Test
    void anOpenDoorCosts() {
        Night shut = heated();
        Night open = heated();
        open.tunnel.openings().door(true);
        shut.hours(1);
        open.hours(1);
        assertThat(open.tunnel.airC()).isLessThan(shut.tunnel.airC() - 2);
    }

    @Test
    void aTearCostsByItsSize() {
        Night small = heated();
        Night large = heated();
        small.tunnel.openings().torn(0.05);
        large.tunnel.openings().torn(0.5);
        small.hours(1);
        large.hours(1);
        assertThat(large.tunnel.airC()).isLessThan(small.tunnel.airC() - 1);
    }

    @Test
    void aVentFanDriesWithDryAirAndUsesElectricity() {
        Night night = heated();
        double humidBefore = night.tunnel.humidityKgPerKg();
        night.tunnel.openings().fanContact(true);
        night.hours(0.5);
        assertThat(night.tunnel.humidityKgPerKg()).isLessThan(humidBefore);
        assertThat(night.tunnel.openings().powerW()).isEqualTo(60);
        assertThat(night.tunnel.openings().energyJ()).isCloseTo(60 * 1800, within(1e-6));
        night.tunnel.openings().supplied(false);
        assertThat(night.tunnel.openings().powerW()).isZero();
    }

    @Test
    void leakageGrowsWithWindAndWithTheRootOfTheLift() {
        assertThat(Leakage.m3PerS(250, 4, 0) / Leakage.m3PerS(250, 1, 0)).isCloseTo(2, within(1e-12));
        assertThat(Leakage.m3PerS(250, 0, 6) / Leakage.m3PerS(250, 0, 3)).isCloseTo(2, within(1e-12));
        assertThat(Leakage.m3PerS(250, 5, 3)).isGreaterThan(Leakage.m3PerS(250, 5, 0));
    }
}
