package rimeward.sim.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class HeaterTest {
    private static final DryerParameters NO_DRYER = new DryerParameters.None();

    @Test
    void eachStageAddsItsPower() {
        Night night = Night.with(NO_DRYER);
        Heater heater = night.tunnel.heater();
        heater.contact(0, true);
        night.seconds(5);
        assertThat(heater.powerW()).isEqualTo(1000);
        heater.contact(1, true);
        night.seconds(5);
        assertThat(heater.powerW()).isEqualTo(2000);
        assertThat(heater.powerW(1)).isEqualTo(1000);
        heater.contact(0, false);
        night.seconds(5);
        assertThat(heater.powerW(0)).isZero();
        assertThat(heater.energyJ(0)).isCloseTo(10_000, within(1e-6));
        assertThat(heater.energyJ(1)).isCloseTo(10_000, within(1e-6));
    }

    @Test
    void theElementWarmsAMinuteBeforeTheAir() {
        Night night = Night.with(NO_DRYER);
        night.tunnel.heater().contact(0, true);
        double beforeC = night.tunnel.airC();
        night.seconds(30);
        assertThat(night.tunnel.elementC()).isGreaterThan(20);
        night.hours(1);
        assertThat(night.tunnel.airC()).isGreaterThan(beforeC + 1);
    }

    @Test
    void itsDialCyclesAroundItsMarkWithALag() {
        DialParameters dial = new DialParameters(6, 2, 180);
        Night night = Night.with(
                Defaults.tunnel(),
                new MachineParameters(Defaults.heater(List.of(2000.0), dial), NO_DRYER, VentFanParameters.none()),
                Defaults.evening());
        night.tunnel.heater().contact(0, true);
        night.weather(-4, 90, 2, -12).hours(4);
        int turns = 0;
        double highestC = -50;
        double lowestC = 50;
        boolean open = night.tunnel.heater().isDialOpen();
        for (int i = 0; i < 4 * 720; i++) {
            night.seconds(5);
            turns += open == night.tunnel.heater().isDialOpen() ? 0 : 1;
            open = night.tunnel.heater().isDialOpen();
            highestC = Math.max(highestC, night.tunnel.airC());
            lowestC = Math.min(lowestC, night.tunnel.airC());
        }
        assertThat(turns).isBetween(6, 60);
        assertThat(highestC).isBetween(6.0, 9.0); // the bimetal lags, so the air overshoots both marks
        assertThat(lowestC).isBetween(2.0, 4.0);
    }

    @Test
    void aStalledFanTripsTheCutOutAgainAndAgain() {
        Night night = Night.with(NO_DRYER);
        night.tunnel.heater().fanStalled(true);
        night.tunnel.heater().contact(0, true);
        night.until(night.tunnel.heater()::isCutOutOpen);
        assertThat(night.tunnel.elementC()).isLessThan(151);
        night.until(() -> !night.tunnel.heater().isCutOutOpen());
        assertThat(night.tunnel.elementC()).isLessThan(95);
        night.until(night.tunnel.heater()::isCutOutOpen);
    }

    @Test
    void withoutMainsTheTunnelCools() {
        Night night = Night.with(NO_DRYER).weather(-5, 90, 2, -12);
        night.tunnel.heater().contact(0, true);
        night.tunnel.heater().contact(1, true);
        night.hours(6);
        double warmC = night.tunnel.airC();
        night.tunnel.heater().supplied(false);
        night.hours(1);
        assertThat(night.tunnel.heater().powerW()).isZero();
        assertThat(night.tunnel.airC()).isLessThan(warmC - 2);
    }
}
